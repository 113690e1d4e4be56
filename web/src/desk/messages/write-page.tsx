import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Empty, LinkButton, Loading, Problem, SelectField, TickField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useHire } from "../hire/use-hire.ts";
import { queries } from "../query-client.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { HireCalendar } from "./hire-calendar.tsx";
import { OutboxNotice, useOutbox } from "./messages-page.tsx";
import { newUuid } from "./new-uuid.ts";
import { OutboxTable } from "./outbox-table.tsx";
import { PaperLinks } from "./paper-links.tsx";
import "./messages.css";

const KINDS = ["booking", "preHire", "dayBefore", "returnReminder", "statement"] as const;
const LANGUAGES = ["en", "de", "fr"] as const;
type Kind = (typeof KINDS)[number];
type Language = (typeof LANGUAGES)[number];
type Preview = Schemas["MessagePreview"];

/** Kinds that say how many days are left. */
const SAYS_DAYS: readonly Kind[] = ["dayBefore", "returnReminder"];

/** The message that fits the stage of a hire. */
const FITS: Readonly<Record<string, Kind>> = {
  booked: "preHire",
  handedOver: "returnReminder",
  onHire: "returnReminder",
  settled: "statement",
  closed: "statement",
};

function PreviewText({ hireId, preview }: { readonly hireId: string; readonly preview: Preview }) {
  return (
    <div className="stack">
      {preview.problems.length > 0 && (
        <Problem title={t("messages.stops")}>
          <ul>
            {preview.problems.map(({ path, expected }) => (
              <li key={path}>{expected}</li>
            ))}
          </ul>
        </Problem>
      )}
      {preview.isDraft && <p role="note">{t("messages.draftLanguage")}</p>}
      <dl className="message-facts">
        <dt>{t("messages.to")}</dt>
        <dd>{preview.to}</dd>
        <dt>{t("messages.subject")}</dt>
        <dd lang={preview.language}>{preview.subject}</dd>
      </dl>
      <section className="message-text" aria-label={t("messages.textLabel")} lang={preview.language}>
        {preview.body}
      </section>
      <PaperLinks hireId={hireId} papers={preview.attachments} />
      {preview.lacking.map(({ paper, problems }) => (
        <p key={paper} className="quiet">
          {t("messages.notAttached", {
            paper: t("message.paper", { paper }),
            why: problems.map(({ expected }) => expected).join("; "),
          })}
        </p>
      ))}
    </div>
  );
}

interface SendProps {
  readonly hireId: string;
  readonly preview: Preview;
}

/** Sends what is shown: at once, or at the moment of its kind. Pressed twice it is one message. */
function SendActs({ hireId, preview }: SendProps) {
  const [id, setId] = useState(newUuid);
  const [draftRead, setRead] = useState(false);
  const { kind, language, isDraft } = preview;
  const send = useMutation({
    mutationFn: (when: "now" | "moment") =>
      take(
        client.POST("/api/hires/{id}/messages", {
          params: { path: { id: hireId } },
          body: { id, kind, language, when, draftRead },
        }),
      ),
    onSuccess: () => {
      setId(newUuid());
      void queries.invalidateQueries({ queryKey: ["messages"] });
    },
  });
  const mayNot = preview.problems.length > 0 || (isDraft && !draftRead);
  return (
    <div className="stack-tight">
      {isDraft && (
        <TickField value={draftRead} onChange={setRead}>
          {t("messages.draftTick")}
        </TickField>
      )}
      <div className="row">
        <Button look="main" onPress={() => send.mutate("now")} isDisabled={mayNot} isPending={send.isPending}>
          {t("messages.sendNow")}
        </Button>
        {preview.moment !== null && (
          <Button onPress={() => send.mutate("moment")} isDisabled={mayNot} isPending={send.isPending}>
            {t("messages.sendThen", { at: dateText(preview.moment, "dayTime") })}
          </Button>
        )}
      </div>
      {preview.moment !== null && SAYS_DAYS.includes(kind) && (
        <p className="quiet">{t("messages.thenCounts")}</p>
      )}
      {send.isSuccess && <p role="status">{t("messages.queued")}</p>}
      <FailureNote failure={send.error} />
    </div>
  );
}

function OfHire({ hireId }: { readonly hireId: string }) {
  const outbox = useOutbox("all", hireId);
  const messages = outbox.data?.pages.flatMap((page) => page.messages) ?? [];
  const [first] = outbox.data?.pages ?? [];
  return (
    <section className="card stack" aria-labelledby="of-hire-title">
      <h2 id="of-hire-title">{t("messages.ofHire")}</h2>
      {first !== undefined && <OutboxNotice outbox={first} />}
      <FailureNote failure={outbox.error} onAgain={() => void outbox.refetch()} />
      {outbox.isSuccess && messages.length === 0 && <Empty>{t("messages.noneOfHire")}</Empty>}
      {messages.length > 0 && <OutboxTable messages={messages} />}
    </section>
  );
}

function Writer({ hireId, stage }: { readonly hireId: string; readonly stage: string }) {
  const [kind, setKind] = useState<Kind>(FITS[stage] ?? "booking");
  const [language, setLanguage] = useState<Language>("en");
  const preview = useQuery({
    queryKey: ["messagePreview", hireId, kind, language],
    queryFn: () =>
      take(
        client.GET("/api/hires/{id}/message", {
          params: { path: { id: hireId }, query: { kind, language } },
        }),
      ),
  });
  return (
    <div className="message-columns">
      <section className="card stack" aria-label={t("messages.kind")}>
        <SelectField
          label={t("messages.kind")}
          value={kind}
          options={KINDS.map((value) => ({ value, label: t("message.kind", { kind: value }) }))}
          onChange={setKind}
        />
        <SelectField
          label={t("messages.language")}
          value={language}
          options={LANGUAGES.map((value) => ({ value, label: t("messages.lang", { language: value }) }))}
          onChange={setLanguage}
        />
        {preview.isSuccess && <SendActs key={`${kind} ${language}`} hireId={hireId} preview={preview.data} />}
      </section>
      <section className="card stack" aria-labelledby="preview-title">
        <h2 id="preview-title">{t("messages.preview")}</h2>
        {preview.isPending && <Loading />}
        <FailureNote failure={preview.error} onAgain={() => void preview.refetch()} />
        {preview.isSuccess && <PreviewText hireId={hireId} preview={preview.data} />}
      </section>
    </div>
  );
}

/** Write to the hirer of one hire: which message, in which language, as it would go out now. */
export default function WritePage({ id }: { readonly id: string }) {
  const hire = useHire(id);
  usePageTitle(t("messages.write"));
  if (hire.isPending) return <Loading />;
  if (hire.isError) return <FailureNote failure={hire.error} onAgain={() => void hire.refetch()} />;
  const { customer, reference, stage } = hire.data.hire;
  return (
    <>
      <div className="page-head">
        <h1>{t("messages.writeTo", { name: customer })}</h1>
        <p className="quiet">{reference}</p>
        <div className="page-acts">
          <LinkButton href={placeOfHire(id)}>{t("messages.back")}</LinkButton>
          <LinkButton href="/messages">{t("messages.toOutbox")}</LinkButton>
        </div>
      </div>
      <div className="stack">
        <Writer hireId={id} stage={stage} />
        <OfHire hireId={id} />
        <HireCalendar hireId={id} />
      </div>
    </>
  );
}
