import type { Diagnosis } from "@setfair/engine/diagnosis";
import type { Guide } from "../offline/database.ts";
import { answerText, causeText, faultCheckText, symptomText } from "../parts/finder/fault-words.ts";
import { t } from "../parts/words.ts";
import { CallLink } from "./call-link.tsx";
import type { HirerGuide } from "./use-guide.ts";

/** As many causes as one may read out on the telephone. */
const SHOWN = 3;

/** How the looking ended: it works, it is known, or somebody else must look; and what was tried, to read out. */
export function FaultEnd({
  hirer,
  guide,
  diagnosis,
  onCall,
}: {
  readonly hirer: HirerGuide;
  readonly guide: Guide;
  readonly diagnosis: Diagnosis;
  readonly onCall: () => void;
}) {
  const { outcome, causes, goOnWith, tried } = diagnosis;
  const only = causes.length === 1;
  return (
    <>
      <section className={outcome === "fixed" ? "card stack fault-fixed" : "card stack"} aria-live="polite">
        <h2>{t(`hirer.fault.end.${outcome === "fixed" || outcome === "found" ? outcome : "call"}`)}</h2>
        <p>{t(`hirer.fault.then.${outcome === "fixed" || outcome === "found" ? outcome : "call"}`)}</p>
        {outcome !== "fixed" && causes.length > 0 && (
          <>
            <p className="field-label">{t(only ? "hirer.fault.cause" : "hirer.fault.causes")}</p>
            <ul className="tried">
              {causes.slice(0, SHOWN).map(({ cause, chance }) => (
                <li key={cause}>
                  {only
                    ? causeText(cause)
                    : t("hirer.fault.causeOne", {
                        cause: causeText(cause),
                        n: Math.max(1, Math.round(chance.value * 100)),
                      })}
                </li>
              ))}
            </ul>
          </>
        )}
        {goOnWith !== null && (
          <a className="button button-main button-wide" href={`#fault/${encodeURIComponent(goOnWith)}`}>
            {t("hirer.fault.goOn", { symptom: symptomText(goOnWith) })}
          </a>
        )}
        {outcome !== "fixed" && (
          <CallLink
            guide={guide}
            onCall={tried.length === 0 ? onCall : () => undefined}
            className={goOnWith === null ? "button button-main button-wide" : "button button-wide"}
          />
        )}
        <Kept hirer={hirer} />
      </section>
      {tried.length > 0 && (
        <section className="card stack-tight" aria-labelledby="tried">
          <h2 id="tried">{t("hirer.fault.tried")}</h2>
          <ol className="tried">
            {tried.map(({ check, answer }) => (
              <li key={check}>
                {faultCheckText(check)} <strong>{answerText(answer)}.</strong>
              </li>
            ))}
          </ol>
        </section>
      )}
    </>
  );
}

/** Where the record is: at the depot, or still on this phone. */
export function Kept({ hirer }: { readonly hirer: HirerGuide }) {
  return (
    <p className="quiet" role="status">
      {t(hirer.helpWaiting > 0 ? "hirer.fault.waiting" : "hirer.fault.sent")}
    </p>
  );
}
