import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { FileTrigger } from "react-aria-components";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading, SelectField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";
import { useVehicles } from "./calendar-links.tsx";

const KINDS = ["mot", "service", "repair", "layUp", "other"] as const;
type Kind = (typeof KINDS)[number];
type Answer = Schemas["CalendarImportAnswer"];
type Rejected = Answer["rejected"][number];

const whyText = ({ why, zone, from, to }: Rejected): string => {
  if (why === "taken" && from !== null && to !== null)
    return t("calendar.why.taken", { from: dateText(from, "fullTime"), to: dateText(to, "fullTime") });
  if (why === "unknownZone") return t("calendar.why.unknownZone", { zone });
  return t(`calendar.why.${why === "taken" ? "broken" : why}`);
};

function Said({ answer }: { readonly answer: Answer }) {
  const counts = (["skipped", "past", "cancelled", "floating"] as const).filter((name) => answer[name] > 0);
  return (
    <div className="stack-tight">
      <p className="quiet">
        {t("calendar.window", {
          from: dateText(answer.from, "full"),
          until: dateText(answer.until, "full"),
        })}
      </p>
      {answer.endless.map((title) => (
        <p key={title}>{t("calendar.endless", { title })}</p>
      ))}
      {counts.map((name) => (
        <p key={name} className="quiet">
          {t(`calendar.${name}`, { n: answer[name] })}
        </p>
      ))}
    </div>
  );
}

/** What would happen with the file, and the act that makes it happen. */
function CalendarAnswer(props: {
  readonly answer: Answer;
  readonly onConfirm: () => void;
  readonly isPending: boolean;
}) {
  const { answer, onConfirm, isPending } = props;
  const [n, less] = [answer.added.length, answer.rejected.length];
  return (
    <div className="stack" role="status">
      <h3>{t(answer.done ? "calendar.added" : "calendar.add", { n })}</h3>
      <Said answer={answer} />
      {less > 0 && (
        <div className="stack-tight">
          <h3>{t("calendar.rejected", { n: less })}</h3>
          <ul className="stack-tight">
            {answer.rejected.map((each, k) => (
              // several may be alike: only their place tells them apart
              // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes while it is shown
              <li key={k}>
                <strong>{each.title}</strong> {whyText(each)}
              </li>
            ))}
          </ul>
        </div>
      )}
      <ul className="stack-tight">
        {answer.added.slice(0, 60).map(({ title, from, to }) => (
          <li key={`${title} ${from}`}>
            {title}{" "}
            <span className="quiet num">
              {dateText(from, "fullTime")} – {dateText(to, "fullTime")}
            </span>
          </li>
        ))}
      </ul>
      {!answer.done && n > 0 && (
        <div className="row">
          <Button look="main" onPress={onConfirm} isPending={isPending}>
            {less === 0 ? t("calendar.confirm", { n }) : t("calendar.confirmLess", { n, less })}
          </Button>
        </div>
      )}
    </div>
  );
}

/** A calendar file as periods in which a vehicle is off the road. */
export function CalendarFile() {
  const vehicles = useVehicles();
  const [vehicleId, setVehicle] = useState<string | null>(null);
  const [kind, setKind] = useState<Kind>("other");
  const [text, setText] = useState("");
  const run = useMutation({
    mutationFn: ({ file, confirm }: { readonly file: string; readonly confirm: Answer | null }) =>
      take(
        client.POST("/api/vehicles/{id}/calendar", {
          params: { path: { id: vehicleId ?? "" } },
          body: {
            text: file,
            kind,
            ...(confirm === null
              ? {}
              : { confirm: { added: confirm.added.length, rejected: confirm.rejected.length } }),
          },
        }),
      ),
    onSuccess: ({ done }) => {
      if (done) void queries.invalidateQueries({ queryKey: ["diary"] });
    },
  });
  const choose = async (files: FileList | null) => {
    const file = files?.[0];
    if (file === undefined) return;
    const read = await file.text();
    setText(read);
    run.mutate({ file: read, confirm: null });
  };
  return (
    <section className="card stack" aria-labelledby="calendar-file-title">
      <h2 id="calendar-file-title">{t("calendar.import")}</h2>
      <p className="quiet">{t("calendar.importLead")}</p>
      <SelectField
        label={t("calendar.vehicle")}
        value={vehicleId}
        options={(vehicles.data?.vehicles ?? []).map(({ id, name, registration }) => ({
          value: id,
          label: `${name} ${registration}`,
        }))}
        onChange={(next) => {
          setVehicle(next);
          run.reset();
        }}
      />
      <SelectField
        label={t("calendar.blockKind")}
        value={kind}
        options={KINDS.map((value) => ({ value, label: t("calendar.blockKindName", { kind: value }) }))}
        onChange={(next) => {
          setKind(next);
          run.reset();
        }}
      />
      <div className="row">
        <FileTrigger acceptedFileTypes={[".ics", "text/calendar"]} onSelect={(files) => void choose(files)}>
          <Button isDisabled={vehicleId === null}>{t("import.choose")}</Button>
        </FileTrigger>
      </div>
      {run.isPending && <Loading what={t("import.looking")} />}
      <FailureNote failure={run.error} />
      {run.data !== undefined && (
        <CalendarAnswer
          answer={run.data}
          isPending={run.isPending}
          onConfirm={() => run.mutate({ file: text, confirm: run.data ?? null })}
        />
      )}
    </section>
  );
}
