import { BadInput } from "../../base/bad-input.ts";
import { type Figure, figure } from "../../base/figure.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { deriveVehicle } from "../../vehicle/derive.ts";
import { makeCounterOffer } from "./counter-offer.ts";
import { findLeastChange } from "./find-least-change.ts";
import { loadFindings } from "./load-findings.ts";
import { loadLines, type MassLine } from "./load-lines.ts";
import { loadMisfits } from "./load-misfits.ts";
import { against, loadTotals } from "./load-totals.ts";
import { placeLoads } from "./place-loads.ts";
import { shownLine } from "./shown-line.ts";
import type { CheckLoad, LoadAgainstLimit, LoadInput, LoadResult } from "./types.ts";

/**
 * Masses of the loaded vehicle: the total and each axle by moments (kg, metres behind the front axle), each
 * with its basis, against MAM, axle limits, tyres and the labels of places; the chance of being over; the least
 * change that makes it legal. A margin inside what an unweighed mass in running order may be out needs a
 * weighbridge ticket. A ticket in the input replaces the sum. The plate on the vehicle comes first.
 * @throws BadInput where the load does not fit the vehicle or the party
 */
export const checkLoad: CheckLoad = (input) => {
  const problems = loadMisfits(input);
  if (problems.length > 0) throw new BadInput(problems);
  const lines = loadLines(input);
  const checked = againstLimits(input, lines);
  const leastChange = findLeastChange(input, lines, checked);
  const legal = isLegal(checked);
  const { total, front, rear } = checked;
  const result: LoadResult = {
    lines: lines.map((line) => shownLine(line, input)),
    ...checked,
    ...payloads(input, total),
    plated: platedMasses(input),
    frontShare: shareOf(front, total),
    needsWeighbridge: legal && input.ticket === undefined && isWithinDoubt(input, total, front, rear),
    legal,
    leastChange,
    counterOffer: leastChange.outcome === "none" ? makeCounterOffer(input, lines, checked) : null,
  };
  return { result, findings: loadFindings(input, lines, result) };
};

type Checked = Pick<LoadResult, "total" | "front" | "rear" | "tyres" | "places">;

function againstLimits(input: LoadInput, lines: readonly MassLine[]): Checked {
  const { masses, id } = input.vehicle;
  const { tyreLoad } = deriveVehicle(input.vehicle);
  const loads = loadTotals(input, lines);
  const limit = (kg: number) => figure(kg, "kg", "-", { vehicle: id }, "declared");
  const front = (most: Figure) => against(loads.front, loads.frontSd, most);
  const rear = (most: Figure) => against(loads.rear, loads.rearSd, most);
  return {
    total: against(loads.total, loads.totalSd, limit(masses.mamKg)),
    front: front(limit(masses.axleMaxKg.front)),
    rear: rear(limit(masses.axleMaxKg.rear)),
    tyres: tyreLoad === null ? null : { front: front(tyreLoad.front), rear: rear(tyreLoad.rear) },
    places: placeLoads(input),
  };
}

/** Within the plate, both axles, the tyres and every label. */
function isLegal({ total, front, rear, tyres, places }: Checked): boolean {
  const checked = [total, front, rear, ...(tyres === null ? [] : [tyres.front, tyres.rear])];
  return (
    checked.every(({ margin }) => margin.value >= -1e-9) &&
    places.every(({ load, limit }) => limit === null || load.value <= limit.value + 1e-9)
  );
}

function payloads({ vehicle }: LoadInput, { load }: LoadAgainstLimit) {
  const { miroKg, options } = vehicle.masses;
  const { payload, minimumPayload } = deriveVehicle(vehicle);
  const optionsKg = options.reduce((sum, option) => sum + option.massKg, 0);
  const inputs = { mamKg: load.value, miroKg, optionsKg };
  const payloadUsed = figure(load.value - miroKg - optionsKg, "kg", "mass.payload", inputs, load.basis);
  return { payload, payloadUsed, minimumPayload };
}

function platedMasses({ vehicle }: LoadInput): LoadResult["plated"] {
  const { mamKg, technicalMaxKg, unladenKg } = vehicle.masses;
  const kg = (value: number) => figure(value, "kg", "-", { vehicle: vehicle.id }, "declared");
  return {
    mam: kg(mamKg),
    technicalMax: kg(technicalMaxKg),
    unladen: unladenKg === undefined ? null : kg(unladenKg),
  };
}

function shareOf(front: LoadAgainstLimit, total: LoadAgainstLimit): Figure {
  const inputs = { loadKg: front.load.value, ofKg: total.load.value };
  return figure(inputs.loadKg / inputs.ofKg, "share", "-", inputs, "computed");
}

/** Whether a margin, of the whole or of an axle, is smaller than what an unweighed mass in running order may be out. */
function isWithinDoubt(
  { vehicle }: LoadInput,
  total: LoadAgainstLimit,
  front: LoadAgainstLimit,
  rear: LoadAgainstLimit,
): boolean {
  const { miroKg, miroFrontKg, miroBasis } = vehicle.masses;
  if (miroBasis.weighed) return false;
  const share = ruleFigure("mass.runningOrder.toleranceShare", vehicle.validFrom).value;
  return (
    total.margin.value < share * miroKg ||
    front.margin.value < share * miroFrontKg ||
    rear.margin.value < share * (miroKg - miroFrontKg)
  );
}
