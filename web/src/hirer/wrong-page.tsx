import type { SymptomOnVehicle } from "@setfair/engine/diagnosis";
import { useState } from "react";
import type { Guide } from "../offline/database.ts";
import { symptomText, thingText } from "../parts/finder/fault-words.ts";
import { faultsIn } from "../parts/finder/use-finder.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { matches } from "./matches.ts";
import { SearchField } from "./search-field.tsx";

const placeOfFault = (id: string): string => `#fault/${encodeURIComponent(id)}`;

/** What is wrong? What can hurt someone stands first, then everything by thing. */
export function WrongPage({ guide }: { readonly guide: Guide }) {
  const [typed, setTyped] = useState("");
  const { symptoms } = faultsIn(guide);
  const found = symptoms.filter(({ symptom, systemKind }) =>
    matches(typed, symptomText(symptom.id), thingText(systemKind)),
  );
  const dangerous = found.filter(({ symptom }) => symptom.dangerous);
  const others = found.filter(({ symptom }) => !symptom.dangerous);
  const things = [...new Set(others.map(({ systemKind }) => systemKind))].sort((a, b) =>
    thingText(a).localeCompare(thingText(b)),
  );
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.wrong.title")}</h1>
      <p className="quiet">{t("hirer.wrong.help")}</p>
      <SearchField label={t("hirer.wrong.search")} value={typed} onChange={setTyped} />
      {found.length === 0 && <p role="status">{t("hirer.wrong.none")}</p>}
      {dangerous.length > 0 && (
        <section aria-labelledby="wrong-danger">
          <h2 id="wrong-danger" className="danger-title">
            {t("hirer.wrong.danger")}
          </h2>
          <SymptomLinks symptoms={dangerous} className="symptom-link symptom-danger" />
        </section>
      )}
      {things.map((kind) => (
        <section key={kind} aria-labelledby={`wrong-${kind}`}>
          <h2 id={`wrong-${kind}`}>{thingText(kind)}</h2>
          <SymptomLinks
            symptoms={others.filter(({ systemKind }) => systemKind === kind)}
            className="symptom-link"
          />
        </section>
      ))}
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

export function SymptomLinks({
  symptoms,
  className,
}: {
  readonly symptoms: readonly SymptomOnVehicle[];
  readonly className: string;
}) {
  return (
    <ul className="symptoms">
      {symptoms.map(({ symptom }) => (
        <li key={symptom.id}>
          <a className={className} href={placeOfFault(symptom.id)}>
            {symptomText(symptom.id)}
          </a>
        </li>
      ))}
    </ul>
  );
}
