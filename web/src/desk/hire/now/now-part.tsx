import { lazy, Suspense } from "react";
import type { Schemas } from "../../../api/client.ts";
import { FindingsList, FindingText, LinkButton, Loading } from "../../../parts/index.ts";
import { dateText, has, say, t } from "../../../parts/words.ts";
import { MissingCard } from "../../rules/missing-card.tsx";
import { DueNotes } from "../notes/due-notes.tsx";
import type { PartProps } from "../use-hire.ts";
import { GateCard } from "./gate-card.tsx";
import { History } from "./history.tsx";

const WillItLast = lazy(() => import("../trip/will-it-last.tsx"));

type Wait = Schemas["Wait"];
type Facts = Parameters<typeof say>[1];

const waitText = ({ code, facts }: Wait): string =>
  has(`waits.${code}`) ? say(`waits.${code}`, facts as Facts) : t("hire.waitsFor", { code });

/** Whose move it is, in the order of the server. */
function Waits({ waits }: { readonly waits: readonly Wait[] }) {
  return (
    <section className="card" aria-labelledby="waits-title">
      <h2 id="waits-title">{t("hire.whoseMove")}</h2>
      <ul className="waits">
        {waits.map((wait) => (
          <li key={`${wait.code}.${JSON.stringify(wait.facts)}`}>
            <strong className="wait-who">{t(`whose.${wait.whose}`)}</strong>
            <span>{waitText(wait)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Conditions({ page }: PartProps) {
  if (page.conditions.length === 0) return null;
  const list = (
    <ol className="conditions-list">
      {page.conditions.map((finding) => (
        <li key={`${finding.code}.${finding.about ?? ""}`}>
          <FindingText finding={finding} />
        </li>
      ))}
    </ol>
  );
  // signed and gone: what holds now is said by itself, and of the same things
  if (page.glass === null)
    return (
      <details className="card conditions">
        <summary className="fold">
          {t("hire.conditions")} · {page.conditions.length}
        </summary>
        {list}
      </details>
    );
  return (
    <section className="card conditions" aria-labelledby="conditions-title">
      <h2 id="conditions-title">{t("hire.conditions")}</h2>
      {list}
    </section>
  );
}

/** After the keys: what can still go wrong, or has, worst told first by the server. */
function OnTheRoad({ page }: PartProps) {
  return (
    <section className="card stack-tight" aria-labelledby="road-title">
      <div className="row spread">
        <h2 id="road-title">{t("hire.toActOn", { n: page.hire.toActOn })}</h2>
        <LinkButton href={`/help/${encodeURIComponent(page.hire.id)}`}>{t("hire.helpThem")}</LinkButton>
      </div>
      <FindingsList findings={page.onTheRoad} />
    </section>
  );
}

/** The trip is over: its forecast stands under Trip, and beside what was used under Return. */
const IS_BACK: readonly Schemas["HirePage"]["hire"]["stage"][] = ["returned", "settled", "closed"];

/** The hire now: whose move, conditions, what stops it, will it last. */
export default function NowPart({ page }: PartProps) {
  const gates = page.glass?.gates ?? [];
  const open = gates.filter(({ state }) => state !== "clear" && state !== "later");
  const rest = gates.filter(({ state }) => state === "clear" || state === "later");
  return (
    <>
      <DueNotes page={page} />
      {page.glass !== null && <Conditions page={page} />}
      {page.onTheRoad.length > 0 && <OnTheRoad page={page} />}
      {page.glass === null && <Conditions page={page} />}
      {page.waits.length > 0 && <Waits waits={page.waits} />}
      {page.wishes !== null && page.wishes !== "" && (
        <section className="card">
          <h2>{t("hire.wishes")}</h2>
          <p>{page.wishes}</p>
        </section>
      )}
      {open.length > 0 && (
        <section className="card" aria-labelledby="gates-title">
          <h2 id="gates-title">{t("hire.gatesOpen", { n: open.length })}</h2>
          <ul className="gates">
            {open.map((gate) => (
              <GateCard key={gate.gate} gate={gate} hireId={page.hire.id} />
            ))}
          </ul>
        </section>
      )}
      {page.vehicle !== null && page.trip !== null && !IS_BACK.includes(page.hire.stage) && (
        <Suspense fallback={<Loading />}>
          <WillItLast page={page} isShort />
        </Suspense>
      )}
      {page.glass !== null && <MissingCard hireId={page.hire.id} version={page.version} />}
      {rest.length > 0 && (
        <details className="card">
          <summary className="fold">{t("hire.gatesRest", { n: rest.length })}</summary>
          <ul className="gates">
            {rest.map((gate) => (
              <li key={gate.gate} className="gate-rest">
                <span>{t(`gate.${gate.gate}`)}</span>
                <span className="quiet">
                  {gate.state === "later"
                    ? t("hire.later", { at: dateText(gate.dueAt, "day") })
                    : t(`gateState.${gate.state}`)}
                </span>
              </li>
            ))}
          </ul>
        </details>
      )}
      {page.history !== undefined && <History history={page.history} />}
    </>
  );
}
