import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Link } from "wouter";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, Loading, SelectField, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { DefectsList } from "./defects-list.tsx";
import { dueText, dutyText, lastText } from "./due-text.ts";
import { Readings } from "./readings.tsx";
import { keyOf, type PieceProps, useKeep } from "./use-keep.ts";

/** Due-date book, defects, damp, water and frost of one vehicle. */
export function VehicleDue({ id }: { readonly id: string }) {
  const upkeep = useQuery({
    queryKey: keyOf(id),
    queryFn: () => take(client.GET("/api/vehicles/{id}/upkeep", { params: { path: { id } } })),
  });
  if (upkeep.isPending) return <Loading />;
  if (upkeep.isError) return <FailureNote failure={upkeep.error} onAgain={() => void upkeep.refetch()} />;
  return (
    <>
      <Book id={id} upkeep={upkeep.data} />
      <DefectsList id={id} upkeep={upkeep.data} />
      <Readings id={id} upkeep={upkeep.data} />
    </>
  );
}

function Book({ id, upkeep }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="due-title">
      <h2 id="due-title">{t("upkeep.book")}</h2>
      <dl className="sums">
        {upkeep.due.map((line) => (
          <div key={line.kind}>
            <dt>
              {dutyText(line.kind)}
              <div className="quiet">
                {t("upkeep.status", { status: line.status })} · {t("upkeep.source", { source: line.source })}
              </div>
            </dt>
            <dd>
              {dueText(line)}{" "}
              <span className={line.state === "over" ? "strip-say-trouble" : "quiet"}>
                {t("upkeep.state", { state: line.state })}
              </span>
              <div className="quiet">{lastText(line)}</div>
            </dd>
          </div>
        ))}
      </dl>
      <EnterDone id={id} upkeep={upkeep} />
      <details>
        <summary className="fold">{t("upkeep.history", { n: upkeep.history.length })}</summary>
        <ul>
          {upkeep.history.map((entry) => (
            <li key={entry.id}>
              {t("upkeep.historyLine", {
                on: dateText(entry.on, "short"),
                what: dutyText(entry.duty),
                who: entry.who,
              })}{" "}
              <span className="quiet">
                {entry.reference} · {t("upkeep.nextOn", { on: dueText(entry) })}
              </span>
            </li>
          ))}
        </ul>
      </details>
      <Link href="/fleet/due">{t("upkeep.toFleetBook")}</Link>
    </section>
  );
}

function EnterDone({ id, upkeep }: PieceProps) {
  const [duty, setDuty] = useState(upkeep.due[0]?.kind ?? "mot");
  const [who, setWho] = useState("");
  const [reference, setReference] = useState("");
  const keep = useKeep(id, () =>
    take(
      client.POST("/api/vehicles/{id}/upkeep", {
        params: { path: { id } },
        body: {
          kind: "done",
          duty,
          on: upkeep.today,
          who,
          ...(reference === "" ? {} : { reference }),
          ...(upkeep.odometer === null ? {} : { km: upkeep.odometer.km }),
        },
      }),
    ),
  );
  return (
    <details>
      <summary className="fold">{t("upkeep.enter")}</summary>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          keep.mutate(undefined);
        }}
      >
        <SelectField
          label={t("upkeep.duty")}
          value={duty}
          options={upkeep.due.map(({ kind }) => ({ value: kind, label: dutyText(kind) }))}
          onChange={setDuty}
        />
        <TextField label={t("upkeep.who")} value={who} onChange={setWho} required />
        <TextField label={t("upkeep.reference")} value={reference} onChange={setReference} />
        <FailureNote failure={keep.error} />
        <Button type="submit" isDisabled={who.trim() === "" || keep.isPending}>
          {t("upkeep.keep")}
        </Button>
      </form>
    </details>
  );
}
