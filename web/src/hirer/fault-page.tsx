import type { ProposedCheck } from "@setfair/engine/diagnosis";
import { storesNow } from "@setfair/engine/diagnosis";
import { useEffect, useMemo } from "react";
import { aboutMinutes, answerText, faultCheckText, symptomText } from "../parts/finder/fault-words.ts";
import { type Faults, type Finder, faultsIn, helpContent, useFinder } from "../parts/finder/use-finder.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { CallLink } from "./call-link.tsx";
import { FaultEnd } from "./fault-end.tsx";
import type { FaultProps } from "./fault-props.ts";
import { civilNow } from "./local-time.ts";
import { StopPage } from "./stop-page.tsx";

const ANSWERS = ["fixed", "found", "notIt", "cannotTell"] as const;

/** One fault looked into on this phone, with or without signal. */
export function FaultPage({ hirer, guide, symptom }: Omit<FaultProps, "on"> & { readonly symptom: string }) {
  const faults = useMemo(() => faultsIn(guide), [guide]);
  const on = faults.symptoms.find((one) => one.symptom.id === symptom);
  if (on === undefined) {
    return (
      <ScrollMain className="guide-main stack">
        <h1>{t("hirer.fault.unknown")}</h1>
        <a className="button" href="#wrong">
          {t("hirer.fault.all")}
        </a>
      </ScrollMain>
    );
  }
  if (on.symptom.dangerous) return <StopPage hirer={hirer} guide={guide} on={on} />;
  return <Finding hirer={hirer} guide={guide} on={on} faults={faults} />;
}

function Finding({ hirer, guide, on, faults }: FaultProps & { readonly faults: Faults }) {
  const { forecast } = hirer;
  const stores = useMemo(
    () => (forecast === null ? [] : storesNow(forecast, civilNow(guide.trip?.timeZone ?? "UTC"))),
    [forecast, guide],
  );
  const finder = useFinder(on, faults, stores, `setfair.fault.${guide.hireId}.${on.symptom.id}`);
  const { diagnosis } = finder;
  const { outcome, next, tried } = diagnosis;
  const keep = () => void hirer.tell(helpContent(diagnosis, "hirer"));
  const hasEnded = outcome !== "check" && tried.length > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: kept once for each end that is reached
  useEffect(() => {
    if (hasEnded) keep();
    document.querySelector("main")?.scrollTo(0, 0);
  }, [hasEnded, tried]);
  return (
    <ScrollMain className="guide-main stack">
      <h1>{symptomText(on.symptom.id)}</h1>
      {next !== null ? (
        <CheckCard check={next} step={tried.length + 1} finder={finder} />
      ) : (
        <FaultEnd hirer={hirer} guide={guide} diagnosis={diagnosis} onCall={keep} />
      )}
      {tried.length > 0 && (
        <button type="button" className="button" onClick={finder.undo}>
          {t("hirer.fault.undo")}
        </button>
      )}
      {next !== null && (
        <>
          <CallLink guide={guide} onCall={keep} className="button button-wide" />
          <p className="quiet">{t("hirer.fault.caution")}</p>
        </>
      )}
      <a className="button" href="#wrong">
        {t("hirer.fault.all")}
      </a>
    </ScrollMain>
  );
}

/** One check at a time, and four answers that a thumb can reach. */
function CheckCard({
  check,
  step,
  finder,
}: {
  readonly check: ProposedCheck;
  readonly step: number;
  readonly finder: Finder;
}) {
  return (
    <section className="card check-now" aria-labelledby="check-now" aria-live="polite">
      <h2 id="check-now">{t("hirer.fault.step", { n: step })}</h2>
      <p className="check-text">{faultCheckText(check.check)}</p>
      <p className="quiet">{aboutMinutes(check.minutes.value)}</p>
      <div className="check-answers">
        {ANSWERS.map((answer) => (
          <button
            key={answer}
            type="button"
            className={answer === "notIt" ? "button button-main" : "button"}
            onClick={() => finder.answer(check.check, answer)}
          >
            {answerText(answer)}
          </button>
        ))}
      </div>
    </section>
  );
}
