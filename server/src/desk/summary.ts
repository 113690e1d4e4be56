import type { GlassReading } from "@setfair/engine";
import type { z } from "zod";
import type { hireSummarySchema } from "../api/schemas/hires.ts";
import { type FindingAnswer, isBeforeKeys, plainFinding } from "./glass.ts";
import { type HireData, partOf } from "./hire-data.ts";
import { moneyOfHire } from "./money-of-hire.ts";

export type HireSummary = z.input<typeof hireSummarySchema>;

/** One hire as a line of a list. */
export function summaryOf(data: HireData, glass: GlassReading): HireSummary {
  const party = partOf(data, "party");
  const vehicle = data.vehicle?.document.description ?? null;
  const counts = isBeforeKeys(data.row.stage);
  return {
    id: data.row.id,
    reference: data.row.number,
    stage: data.row.stage,
    customer: data.row.customerName,
    people: party?.travellers.length ?? 0,
    dogs: party?.dogs ?? 0,
    from: data.from,
    to: data.to,
    vehicle:
      vehicle === null ? null : { id: vehicle.id, name: vehicle.name, registration: vehicle.registration },
    glass: counts && glass.state !== "onTheRoad" ? glass.state : null,
    worst: counts ? worstOf(glass) : null,
    toActOn: data.row.stage === "onHire" || data.row.stage === "handedOver" ? toActOn(glass) : 0,
    owedPence: Math.max(0, moneyOfHire(data).owed.pence),
  };
}

/** What can still go wrong on the road: what the forecast, the due dates and the defects say now. */
const ROAD_GATES: readonly string[] = ["season", "resources", "dueDates", "defects"];
const toActOn = (glass: GlassReading) =>
  glass.gates
    .filter(({ gate }) => ROAD_GATES.includes(gate))
    .flatMap(({ findings }) => findings)
    .filter(({ severity, override }) => override === undefined && severity !== "note").length;

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
