import type { Guide } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";

const DANGERS = ["gas", "alarm", "fire", "accident"] as const;
const STEPS = ["1", "2", "3"] as const;

/** What to do first, in four dangers; then whom to ring. */
export function DangerPage({ guide }: { readonly guide: Guide }) {
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.danger.title")}</h1>
      <div className="two-calls">
        <a className="button button-danger" href="tel:112">
          {t("hirer.danger.ring", { number: "112" })}
        </a>
        <a className="button button-danger" href="tel:999">
          {t("hirer.danger.ring", { number: "999" })}
        </a>
      </div>
      <p>{t("hirer.danger.numbers")}</p>
      {DANGERS.map((danger) => (
        <section key={danger} className="card danger-card" aria-labelledby={`danger-${danger}`}>
          <h2 id={`danger-${danger}`}>{t(`hirer.danger.${danger}.title`)}</h2>
          <ol>
            {STEPS.map((step) => (
              <li key={step}>{t(`hirer.danger.${danger}.${step}`)}</li>
            ))}
          </ol>
        </section>
      ))}
      <p>
        {t("hirer.danger.then", {
          depot: guide.depot.name,
          telephone: guide.depot.telephone,
          registration: guide.vehicle.registration,
        })}
      </p>
      <p className="quiet">{t("hirer.danger.caution")}</p>
    </ScrollMain>
  );
}
