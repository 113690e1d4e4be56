import type { GlassReading } from "@setfair/engine";
import { createWords } from "@setfair/words";
import type { z } from "zod";
import type { hireSummarySchema } from "../api/schemas/hires.ts";
import { type FindingAnswer, isBeforeKeys, plainFinding } from "./glass.ts";
import { openHelp } from "./help.ts";
import { type HireData, partOf } from "./hire-data.ts";
import { moneyOfHire } from "./money-of-hire.ts";

const words = createWords();

export type HireSummary = z.input<typeof hireSummarySchema>;

/** One hire as a line of a list; no glass where the hire is over. */
export function summaryOf(data: HireData, glass: GlassReading | null): HireSummary {
  const party = partOf(data, "party");
  const vehicle = data.vehicle?.document.description ?? null;
  const counts = isBeforeKeys(data.row.stage);
  const onRoad = data.row.stage === "onHire" || data.row.stage === "handedOver";
  const asked = onRoad ? openHelp(data.records).length : 0;
  return {
    id: data.row.id,
    reference: data.row.number,
    stage: data.row.stage,
    customer: data.row.customerName === "" ? words.t("hirerCard.erased") : data.row.customerName,
    people: party?.travellers.length ?? 0,
    dogs: party?.dogs ?? 0,
    from: data.from,
    to: data.to,
    vehicle:
      vehicle === null ? null : { id: vehicle.id, name: vehicle.name, registration: vehicle.registration },
    glass: counts && glass !== null && glass.state !== "onTheRoad" ? glass.state : null,
    gatesLater: counts && glass !== null ? gatesLater(glass) : 0,
    worst:
      counts && glass !== null
        ? worstOf(glass)
        : asked > 0
          ? HELP_ASKED
          : onRoad && glass !== null
            ? worstOnRoad(glass)
            : null,
    toActOn: onTheRoad(data, glass).length + Math.max(0, asked - 1),
    late: lateOf(data),
    owedPence: Math.max(0, moneyOfHire(data).owed.pence),
  };
}

/** Gates that fall due later; what is signed with the keys in the hand is not counted. */
const gatesLater = ({ gates }: GlassReading): number =>
  gates.filter(({ gate, isDue }) => !isDue && gate !== "signatures").length;

/** Something failed on the road, the hirer was told to ring, and nobody at the desk has answered yet. */
const HELP_ASKED: FindingAnswer = {
  code: "diagnosis.helpAsked",
  gate: "defects",
  severity: "refer",
  basis: "safety",
  facts: {},
  sources: [],
  mends: [],
};

/** What is to act on after the keys, help asked for first; nothing before them and nothing once it is back. */
export function onTheRoad(data: HireData, glass: GlassReading | null): readonly FindingAnswer[] {
  if (data.row.stage !== "onHire" && data.row.stage !== "handedOver") return [];
  const help = openHelp(data.records).length > 0 ? [HELP_ASKED] : [];
  return [...help, ...(glass === null ? [] : openOnRoad(glass).map(plainFinding))];
}

/** What can still go wrong on the road: what the forecast, the due dates and the defects say now. */
const ROAD_GATES: readonly string[] = ["season", "resources", "dueDates", "defects"];
const openOnRoad = (glass: GlassReading) =>
  glass.gates
    .filter(({ gate }) => ROAD_GATES.includes(gate))
    .flatMap(({ findings }) => findings)
    .filter(({ severity, override }) => override === undefined && severity !== "note");

const SEVERITIES: readonly string[] = ["refuse", "refer", "unchecked", "condition"];
function worstOnRoad(glass: GlassReading): FindingAnswer | null {
  const [worst] = [...openOnRoad(glass)].sort(
    (a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity),
  );
  return worst === undefined ? null : plainFinding(worst);
}

/** Keys that should have gone, or a vehicle that should be back. */
function lateOf({ row, now }: HireData): HireSummary["late"] {
  if (row.stage === "booked" && row.from < now) return "out";
  return (row.stage === "onHire" || row.stage === "handedOver") && row.to < now ? "back" : null;
}

/** The first finding that makes the glass what it is. */
function worstOf(glass: GlassReading): FindingAnswer | null {
  const first = glass.because.find(({ code }) => code !== "gate.notChecked");
  const found = glass.gates
    .flatMap(({ findings }) => findings)
    .find(({ code, about }) => code === first?.code && about === first.about);
  if (found === undefined) {
    const gate = glass.because[0]?.gate;
    return gate === undefined
      ? null
      : {
          code: "gate.notChecked",
          gate,
          severity: "unchecked",
          basis: "policy",
          facts: {},
          sources: [],
          mends: [],
        };
  }
  return plainFinding(found);
}
