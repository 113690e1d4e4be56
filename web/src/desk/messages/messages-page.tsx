import { useInfiniteQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, ChoiceField, Empty, Loading } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { OutboxTable, PlannedList } from "./outbox-table.tsx";
import { SettingsDialog } from "./settings-dialog.tsx";
import "./messages.css";

const SHOW = ["all", "open", "sent"] as const;
type Show = (typeof SHOW)[number];

/** The outbox, a page at a time; of one hire where that is given. */
export function useOutbox(show: Show, hireId?: string) {
  return useInfiniteQuery({
    queryKey: ["messages", show, hireId ?? ""],
    initialPageParam: "",
    queryFn: ({ pageParam }) =>
      take(
        client.GET("/api/messages", {
          params: {
            query: {
              show,
              limit: 25,
              ...(hireId === undefined ? {} : { hireId }),
              ...(pageParam === "" ? {} : { after: pageParam }),
            },
          },
        }),
      ),
    getNextPageParam: (last) => last.next ?? undefined,
    placeholderData: (before) => before,
  });
}

/** What keeps messages from going out at all. */
export function OutboxNotice({
  outbox,
}: {
  readonly outbox: Pick<Schemas["Outbox"], "mailServer" | "hasFrom" | "readsBounces">;
}) {
  if (outbox.mailServer === null)
    return (
      <div className="state-box" role="note">
        <strong>{t("messages.noServer")}</strong>
        <p>{t("messages.noServerNote")}</p>
      </div>
    );
  return outbox.hasFrom ? (
    <p className="quiet">{t("messages.bouncesHow", { by: outbox.readsBounces ? "folder" : "hand" })}</p>
  ) : (
    <div className="state-box" role="note">
      <strong>{t("messages.noFrom")}</strong>
    </div>
  );
}

/** Everything that was written to hirers, and what became of it. */
export default function MessagesPage() {
  usePageTitle(t("messages.title"));
  const { may } = useSignedIn();
  const [show, setShow] = useState<Show>("all");
  const [isSetting, setSetting] = useState(false);
  const outbox = useOutbox(show);
  const [first] = outbox.data?.pages ?? [];
  const messages = outbox.data?.pages.flatMap((page) => page.messages) ?? [];
  return (
    <>
      <div className="page-head">
        <h1>{t("messages.title")}</h1>
        <p className="quiet">{t("messages.lead")}</p>
        {may.includes("terms.write") && (
          <div className="page-acts">
            <Button onPress={() => setSetting(true)}>{t("messages.settings")}</Button>
          </div>
        )}
      </div>
      <div className="stack">
        {first !== undefined && <OutboxNotice outbox={first} />}
        <div className="card stack">
          <ChoiceField
            label={t("messages.show")}
            value={show}
            options={SHOW.map((value) => ({ value, label: t(`messages.show.${value}`) }))}
            onChange={setShow}
          />
          {outbox.isPending && <Loading />}
          <FailureNote failure={outbox.error} onAgain={() => void outbox.refetch()} />
          {outbox.isSuccess && messages.length === 0 && <Empty>{t("messages.none")}</Empty>}
          {messages.length > 0 && <OutboxTable messages={messages} />}
          {outbox.hasNextPage && (
            <Button onPress={() => void outbox.fetchNextPage()} isPending={outbox.isFetchingNextPage}>
              {t("messages.more")}
            </Button>
          )}
        </div>
        {first !== undefined && show !== "sent" && (
          <section className="card stack" aria-labelledby="planned-title">
            <h2 id="planned-title">{t("messages.planned")}</h2>
            {first.planned.length === 0 ? (
              <p className="quiet">{t("messages.plannedNone")}</p>
            ) : (
              <PlannedList planned={first.planned} />
            )}
          </section>
        )}
      </div>
      {isSetting && <SettingsDialog onClose={() => setSetting(false)} />}
    </>
  );
}
