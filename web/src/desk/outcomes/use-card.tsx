import { useMutation, useQuery } from "@tanstack/react-query";
import type { FormEvent } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading, NumberField, TickField } from "../../parts/index.ts";
import { figureText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import "./outcomes.css";
import { draftOf, type SheetDraft, sheetOf } from "./use-sheet.ts";

type Use = Schemas["UseOfHire"];
interface TripEnds {
  readonly depart: string;
  readonly return: string;
}
interface CardProps {
  readonly hireId: string;
  /** null: nothing to set it beside */
  readonly trip: TripEnds | null;
}

/** What a hire that is over used, as far as the desk knows it, and how that compares. */
export function UseCard({ hireId, trip }: CardProps) {
  const use = useQuery({
    queryKey: ["use", hireId],
    queryFn: () => take(client.GET("/api/hires/{id}/use", { params: { path: { id: hireId } } })),
    enabled: trip !== null,
  });
  return (
    <section className="card stack" aria-labelledby="use-title">
      <h2 id="use-title">{t("use.title")}</h2>
      {trip === null ? (
        <p className="quiet">{t("use.noTrip")}</p>
      ) : use.isPending ? (
        <Loading />
      ) : use.isError ? (
        <FailureNote failure={use.error} onAgain={() => void use.refetch()} />
      ) : (
        <UseForm hireId={hireId} trip={trip} use={use.data} />
      )}
      <p>
        <Link href="/outcomes" className="link-row">
          {t("outcomes.title")}
        </Link>{" "}
        <span className="quiet">{t("use.all")}</span>
      </p>
    </section>
  );
}

function UseForm({
  hireId,
  trip,
  use,
}: {
  readonly hireId: string;
  readonly trip: TripEnds;
  readonly use: Use;
}) {
  const guarded = useGuardedDraft<SheetDraft>(`use.${hireId}`, {
    value: draftOf(use.sheet),
    version: use.version,
  });
  const { value: draft, set: setDraft, basedOn } = guarded;
  const keep = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/use", {
              params: { path: { id: hireId }, query: { basedOn } },
              body: sheetOf(draft, trip, use.sheet),
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["use", hireId] }),
      ),
    onSuccess: (kept) => {
      guarded.done();
      queries.setQueryData(["use", hireId], kept);
      void queries.invalidateQueries({ queryKey: ["forecast-outcomes"] });
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate();
  };
  const number = (name: "fuel" | "def" | "lpg" | "distanceKm", unit: string, max: number) => (
    <NumberField
      label={t(name === "distanceKm" ? "use.distance" : `use.${name}`)}
      unit={unit}
      value={draft[name]}
      min={0}
      max={max}
      onChange={(value) => setDraft({ ...draft, [name]: value })}
    />
  );
  return (
    <form className="stack" onSubmit={send} noValidate>
      <p className="quiet">{t("use.lead")}</p>
      <Compared use={use} />
      <div className="use-fields">
        {number("fuel", "L", 2000)}
        {number("def", "L", 60)}
        {number("lpg", "kg", 200)}
        {number("distanceKm", "km", 30_000)}
      </div>
      <TickField value={draft.fuelFull} onChange={(fuelFull) => setDraft({ ...draft, fuelFull })}>
        {t("use.fuelFull")}
      </TickField>
      <KeptMeanwhile draft={guarded} failure={keep.error} onSettled={keep.reset} />
      <div>
        <Button type="submit" isPending={keep.isPending}>
          {t("use.keep")}
        </Button>
      </div>
    </form>
  );
}

function Compared({ use }: { readonly use: Use }) {
  if (use.compared === null || use.compared.length === 0) return <p className="quiet">{t("use.notYet")}</p>;
  return (
    <ul>
      {use.compared.map(({ store, used, p10, p90 }) => {
        const of = (value: number) => figureText({ value, unit: used.unit });
        return (
          <li key={store}>
            {t("use.compared", {
              store: t(`store.${store}`),
              used: figureText(used),
              low: of(p10),
              high: of(p90),
            })}
          </li>
        );
      })}
    </ul>
  );
}
