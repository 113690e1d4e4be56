import type { StoreNow } from "@setfair/engine/diagnosis";
import { useQuery } from "@tanstack/react-query";
import { useEffect, useMemo, useRef, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { alsoText, symptomText, thingText } from "../../parts/finder/fault-words.ts";
import { matches } from "../../parts/finder/matches.ts";
import { faultsIn } from "../../parts/finder/use-finder.ts";
import { classes, LinkButton, Loading, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { type HirePageData, useHire } from "../hire/use-hire.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { FinderCard } from "./finder-card.tsx";
import { TriedBefore } from "./tried-before.tsx";
import "./help.css";

/** One hirer on the telephone: choose what is wrong, then the same fault finder as on their phone. */
export default function HelpHirePage({ id }: { readonly id: string }) {
  const hire = useHire(id);
  const help = useQuery({
    queryKey: ["help", id],
    queryFn: () => take(client.GET("/api/hires/{id}/help", { params: { path: { id } } })),
  });
  if (hire.isPending || help.isPending) return <Loading />;
  if (hire.isError) return <FailureNote failure={hire.error} onAgain={() => void hire.refetch()} />;
  if (help.isError) return <FailureNote failure={help.error} onAgain={() => void help.refetch()} />;
  return <Ringing page={hire.data} help={help.data} />;
}

function Ringing({ page, help }: { readonly page: HirePageData; readonly help: Schemas["Help"] }) {
  const { hire, customer } = page;
  usePageTitle(t("desk.help.with", { customer: hire.customer }));
  const [typed, setTyped] = useState("");
  const [chosen, setChosen] = useState<string | null>(null);
  const faults = useMemo(() => faultsIn(help), [help]);
  const on = faults.symptoms.find(({ symptom }) => symptom.id === chosen);
  const asks = useRef<HTMLDivElement>(null);
  // in one column the question stands above the list, out of sight of who chose far down in it
  useEffect(() => {
    if (chosen !== null && matchMedia("(max-width: 56.1875em)").matches) asks.current?.focus();
  }, [chosen]);
  // what can hurt someone stands first, as on the hirer's phone
  const found = faults.symptoms
    .filter(({ symptom, systemKind }) =>
      matches(typed, symptomText(symptom.id), thingText(systemKind), alsoText(systemKind)),
    )
    .sort((a, b) => Number(b.symptom.dangerous) - Number(a.symptom.dangerous));
  return (
    <>
      <div className="page-head">
        <div>
          <h1>
            {hire.customer}
            {hire.vehicle !== null && ` · ${hire.vehicle.name} ${hire.vehicle.registration}`}
          </h1>
          <p className="quiet">{t(`stage.${hire.stage}`)}</p>
        </div>
        <div className="page-acts">
          {customer.telephone !== undefined && customer.telephone !== "" && (
            <LinkButton href={`tel:${customer.telephone.replaceAll(" ", "")}`}>
              {t("hire.call", { number: customer.telephone })}
            </LinkButton>
          )}
          <LinkButton href={placeOfHire(hire.id)}>{t("desk.help.openHire")}</LinkButton>
        </div>
      </div>
      <div className="help-columns">
        <section className="card stack help-list" aria-labelledby="wrong">
          <h2 id="wrong">{t("desk.help.wrong")}</h2>
          <TextField label={t("desk.help.symptom")} type="search" value={typed} onChange={setTyped} />
          {found.length === 0 && <p role="status">{t("desk.help.noSymptom")}</p>}
          <ul className="help-symptoms">
            {found.map(({ symptom, systemKind }) => (
              <li key={symptom.id}>
                <button
                  type="button"
                  className={classes("help-symptom", symptom.dangerous && "help-danger")}
                  aria-pressed={symptom.id === chosen}
                  onClick={() => setChosen(symptom.id)}
                >
                  <span>{symptomText(symptom.id)}</span>
                  <span className="quiet">{thingText(systemKind)}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
        <div ref={asks} tabIndex={-1} className={classes("stack", on !== undefined && "help-asks")}>
          {on === undefined ? (
            <section className="card">
              <p>{t("desk.help.choose")}</p>
            </section>
          ) : (
            <FinderCard
              key={on.symptom.id}
              page={page}
              on={on}
              faults={faults}
              stores={help.stores as readonly StoreNow[]}
              onGoOn={setChosen}
            />
          )}
          <TriedBefore entries={help.entries} />
        </div>
      </div>
    </>
  );
}
