import type { Guide } from "../offline/database.ts";
import { dateText, say, t } from "../parts/words.ts";
import { telephoneOf } from "./call-link.tsx";
import { civilNow } from "./local-time.ts";
import type { HirerGuide } from "./use-guide.ts";
import { overAs, type WhatMatters, whatMatters } from "./what-matters.ts";

type Trouble = Extract<WhatMatters, { kind: "trouble" }>;
const DO_AT = [
  "battery12",
  "lpg",
  "freshWater",
  "wasteWater",
  "cassette",
  "fuel",
  "def",
  "tractionBattery",
  "starterBattery",
] as const;
const known = (store: string): (typeof DO_AT)[number] => DO_AT.find((one) => one === store) ?? "battery12";

export interface MattersProps {
  readonly hirer: HirerGuide;
  readonly guide: Guide;
  /** stands on the page of the panel itself */
  readonly onPanel?: boolean;
}

/** One sentence and what to do, before anything else. */
export function Matters({ hirer, guide, onPanel = false }: MattersProps) {
  const { forecast, running, failed, readings, waiting } = hirer;
  const now = civilNow(guide.trip?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone);
  const over = overAs(guide, now);
  if (over !== null) return <Over guide={guide} as={over} waiting={waiting} />;
  const most = forecast === null ? null : whatMatters(forecast, now, guide.trip);
  return (
    <section
      className={most !== null && most.kind !== "lasts" ? "card matters matters-trouble" : "card matters"}
      aria-live="polite"
    >
      {most === null ? (
        <p>{t("hirer.matters.none")}</p>
      ) : most.kind === "now" ? (
        <>
          <h2>{t(`hirer.now.${known(most.store)}`)}</h2>
          <p>{t(`hirer.doSoon.${known(most.store)}`)}</p>
        </>
      ) : most.kind === "trouble" ? (
        <TroubleWords trouble={most} />
      ) : (
        <>
          <h2>{t("hirer.matters.lasts")}</h2>
          <p>
            {most.chanceIn100 === 100
              ? t("hirer.matters.lastsAll", { runs: forecast?.runs ?? 0 })
              : t("hirer.matters.lastsText", { n: most.chanceIn100 })}
          </p>
        </>
      )}
      {forecast !== null && !onPanel && (
        <a className="button button-main button-wide" href="#panel">
          {t("hirer.panel.open")}
        </a>
      )}
      {!onPanel && (
        <div className="matters-ways">
          {forecast !== null && guide.trip !== null && (
            <a className="button" href="#stops">
              {t("hirer.stops.title")}
            </a>
          )}
          <a className="button" href="#wrong">
            {t("hirer.moment.wrong")}
          </a>
        </div>
      )}
      {running && <p role="status">{t("hirer.panel.running")}</p>}
      {failed !== null && <p role="alert">{t("hirer.panel.failed")}</p>}
      {readings.length > 0 && !running && failed === null && (
        <p className="quiet">{t("hirer.matters.after", { at: dateText(readings.at(-1)!.at, "dayTime") })}</p>
      )}
      {waiting > 0 && <p className="quiet">{t("hirer.waiting", { waiting })}</p>}
    </section>
  );
}

/** The trip is over: nothing about its stores any more. */
function Over({
  guide,
  as,
  waiting,
}: {
  readonly guide: Guide;
  readonly as: "back" | "late";
  readonly waiting: number;
}) {
  if (as === "back" && guide.statementAt != null) return null;
  return (
    <section className={as === "late" ? "card matters matters-trouble" : "card matters"}>
      <h2>{t(`hirer.over.${as}`, { to: dateText(guide.to, "dayTime") })}</h2>
      <p>{t(`hirer.over.${as}Text`)}</p>
      {as === "late" && (
        <a className="button button-main button-wide" href={telephoneOf(guide)}>
          {t("hirer.over.ring", { number: guide.depot.telephone })}
        </a>
      )}
      {as === "late" && (
        <a className="button button-wide" href="#wrong">
          {t("hirer.moment.wrong")}
        </a>
      )}
      {waiting > 0 && <p className="quiet">{t("hirer.waiting", { waiting })}</p>}
    </section>
  );
}

function TroubleWords({ trouble }: { readonly trouble: Trouble }) {
  const store = known(trouble.store);
  if (trouble.isPast) {
    return (
      <>
        <h2>{t("hirer.maybe.title")}</h2>
        <p>
          {t("hirer.maybe.text", {
            store: say(`store.${trouble.store}`),
            end: trouble.troubleAt,
            n: trouble.chanceIn100,
            by: dateText(trouble.by, "dayTime"),
          })}
        </p>
      </>
    );
  }
  return (
    <>
      <h2>
        {trouble.stop === null
          ? t(`hirer.doSoon.${store}`)
          : t(`hirer.doAt.${store}`, { stop: trouble.stop })}
      </h2>
      <p>
        {t(`hirer.trouble.${store}`, {
          n: trouble.chanceIn100,
          by: trouble.by === "9999" ? "" : dateText(trouble.by, "dayTime"),
        })}
      </p>
    </>
  );
}
