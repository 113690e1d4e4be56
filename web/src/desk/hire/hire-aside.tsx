import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { GlassDial, GlassPill, glassText } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { type Gate, PAPER_GATES, placeOfGate, placeOfHire, VEHICLE_GATES } from "../where.ts";
import type { HirePageData } from "./use-hire.ts";

type GateOnGlass = Schemas["GateOnGlass"];

const MARK_OF: Readonly<Record<GateOnGlass["state"], "done" | "open" | "no" | "later" | "minded">> = {
  refused: "no",
  referred: "open",
  notCheckedYet: "open",
  conditions: "minded",
  overridden: "minded",
  notes: "done",
  clear: "done",
  later: "later",
};

/** Ticked, open, minded or refused: a shape for each, beside the words. */
function GateMark({ state }: { readonly state: GateOnGlass["state"] }) {
  const mark = MARK_OF[state];
  return (
    <svg
      className={`gate-mark gate-mark-${mark}`}
      width="18"
      height="18"
      viewBox="0 0 18 18"
      aria-hidden="true"
    >
      {mark === "done" && (
        <path d="M3 9.500 7.500 14 15.500 4" fill="none" stroke="currentColor" strokeWidth="2.400" />
      )}
      {mark === "open" && (
        <circle cx="9" cy="9" r="6.500" fill="none" stroke="currentColor" strokeWidth="2" />
      )}
      {mark === "no" && <path d="M4 4l10 10M14 4 4 14" stroke="currentColor" strokeWidth="2.600" />}
      {mark === "minded" && (
        <>
          <circle cx="9" cy="9" r="6.500" fill="none" stroke="currentColor" strokeWidth="2" />
          <path d="M9 2.500a6.500 6.500 0 0 1 0 13z" fill="currentColor" />
        </>
      )}
      {mark === "later" && <path d="M4 9h10" stroke="currentColor" strokeWidth="2" />}
    </svg>
  );
}

/** What is renewed or mended in the course of things is not said ahead of its day. */
const IN_COURSE: readonly Gate[] = ["dueDates", "defects"];
/** Refused whenever it falls due, as things stand: said at once, though the glass does not darken for it yet. */
const isRefusal = ({ finding, override }: GateOnGlass["findings"][number]): boolean =>
  finding.severity === "refuse" && override === null;

function GateList({
  page,
  title,
  gates,
}: {
  readonly page: HirePageData;
  readonly title: string;
  readonly gates: readonly Gate[];
}) {
  const shown = page.glass?.gates.filter(({ gate }) => gates.includes(gate)) ?? [];
  return (
    <section>
      <h2>{title}</h2>
      <ul>
        {shown.map(({ gate, state, findings }) => {
          const isRefusedEarly = state === "later" && !IN_COURSE.includes(gate) && findings.some(isRefusal);
          return (
            <li key={gate}>
              <Link href={placeOfGate(page.hire.id, gate)} className="gate-line">
                <GateMark state={isRefusedEarly ? "refused" : state} />
                <span>{t(`gate.${gate}`)}</span>
                <span className="quiet">{t(isRefusedEarly ? "gateState.early" : `gateState.${state}`)}</span>
              </Link>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** How many gates nobody asks yet, and from when on the next is asked. */
function StillToCome({ gates }: { readonly gates: readonly GateOnGlass[] }) {
  const later = gates.filter(({ isDue }) => !isDue);
  const [first] = later.map(({ dueAt }) => dueAt).sort();
  if (first === undefined) return null;
  return <p>{t("soFar.later", { n: later.length, of: gates.length, at: dateText(first, "day") })}</p>;
}

function Dial({ page }: { readonly page: HirePageData }) {
  if (page.glass === null) return null;
  const { state, before } = page.glass;
  const isSoFar = page.hire.gatesLater > 0;
  return (
    <section className="card dial-card" aria-label={t("hire.mayTheKeysGo")}>
      <GlassDial state={state} before={before?.state ?? null} isSoFar={isSoFar} />
      <p className="dial-says">{glassText(state, isSoFar)}</p>
      <StillToCome gates={page.glass.gates} />
      {before !== null && (
        <p className="quiet">
          {t("hire.before", { state: t(`glass.${before.state}`), at: dateText(before.at, "dayTime") })}
        </p>
      )}
    </section>
  );
}

/** Beside every part of the hire: the glass, and papers and vehicle, two lists that meet at the keys. */
export function HireAside({ page }: { readonly page: HirePageData }) {
  return (
    <aside className="stack hire-aside">
      <Dial page={page} />
      {page.glass !== null && (
        <div className="card meet">
          <div className="meet-lists">
            <GateList page={page} title={t("hire.papers")} gates={PAPER_GATES} />
            <GateList page={page} title={t("hire.vehicle")} gates={VEHICLE_GATES} />
          </div>
          <Link href={`${placeOfHire(page.hire.id)}/handover`} className="meet-keys">
            <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
              <circle cx="7" cy="7" r="4.500" fill="none" stroke="currentColor" strokeWidth="2.200" />
              <path
                d="M10.500 10.500 19 19M16 16l2.500-2.500"
                fill="none"
                stroke="currentColor"
                strokeWidth="2.200"
              />
            </svg>
            {t("hire.keys")} <GlassPill state={page.glass.state} isSoFar={page.hire.gatesLater > 0} />
          </Link>
        </div>
      )}
      {page.glass === null && <AfterKeys page={page} />}
    </aside>
  );
}

/** What is to act on; a vehicle that should be back is, before all else. */
function afterKeysText({ stage, late, to, toActOn }: HirePageData["hire"]): string {
  if (stage !== "onHire" && stage !== "handedOver") return t(`stage.${stage}`);
  return late === "back"
    ? t("hire.lateBack", { to: dateText(to, "dayTime"), n: toActOn })
    : t("desk.onTheRoad", { n: toActOn });
}

/** After the keys the glass is not asked any more: what is to act on, then settling. */
function AfterKeys({ page }: { readonly page: HirePageData }) {
  const { hire, records } = page;
  return (
    <section className="card stack-tight">
      <h2>{afterKeysText(hire)}</h2>
      <p className="quiet">
        {t("hire.walkOut", {
          marks: records.out.marks,
          photos: records.out.photos,
          signed: String(records.out.signed),
        })}
      </p>
      {records.back.started && (
        <p className="quiet">
          {t("hire.walkBack", {
            marks: records.back.marks,
            photos: records.back.photos,
            signed: String(records.back.signed),
          })}
        </p>
      )}
      <p className="quiet">{t("hire.panelReadings", { n: records.panelReadings })}</p>
    </section>
  );
}
