import type { SymptomOnVehicle } from "@setfair/engine/diagnosis";
import { useState } from "react";
import type { Guide } from "../offline/database.ts";
import { alsoText, symptomText, thingText } from "../parts/finder/fault-words.ts";
import { matches } from "../parts/finder/matches.ts";
import { faultsIn } from "../parts/finder/use-finder.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { SearchField } from "./search-field.tsx";

const placeOfFault = (id: string): string => `#fault/${encodeURIComponent(id)}`;

/** What is wrong? What can hurt someone stands first, then everything by thing. */
export function WrongPage({ guide }: { readonly guide: Guide }) {
  const [typed, setTyped] = useState("");
  const { symptoms } = faultsIn(guide);
  const found = symptoms.filter(({ symptom, systemKind }) =>
    matches(typed, symptomText(symptom.id), thingText(systemKind), alsoText(systemKind)),
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
      {typed.trim() !== "" ? (
        <SymptomLinks symptoms={[...dangerous, ...others]} />
      ) : (
        <ul className="things">
          {dangerous.length > 0 && (
            <li>
              <Group title={t("hirer.wrong.danger")} symptoms={dangerous} isDanger />
            </li>
          )}
          {things.map((kind) => (
            <li key={kind}>
              <Group
                title={thingText(kind)}
                symptoms={others.filter(({ systemKind }) => systemKind === kind)}
              />
            </li>
          ))}
        </ul>
      )}
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

function Group({
  title,
  symptoms,
  isDanger = false,
}: {
  readonly title: string;
  readonly symptoms: readonly SymptomOnVehicle[];
  readonly isDanger?: boolean;
}) {
  return (
    <details className="day-place">
      <summary>
        <strong className={isDanger ? "day-name danger-title" : "day-name"}>{title}</strong>
        <span className="day-sub symptoms-first">
          {symptoms
            .slice(0, 2)
            .map(({ symptom }) => symptomText(symptom.id))
            .join(" · ")}
        </span>
      </summary>
      <SymptomLinks symptoms={symptoms} />
    </details>
  );
}

function SymptomLinks({ symptoms }: { readonly symptoms: readonly SymptomOnVehicle[] }) {
  return (
    <ul className="symptoms">
      {symptoms.map(({ symptom }) => (
        <li key={symptom.id}>
          <a
            className={symptom.dangerous ? "symptom-link symptom-danger" : "symptom-link"}
            href={placeOfFault(symptom.id)}
          >
            {symptomText(symptom.id)}
          </a>
        </li>
      ))}
    </ul>
  );
}
