import { BadInput, type InputProblem } from "../../base/bad-input.ts";
import { type Figure, figure } from "../../base/figure.ts";
import { chanceOver } from "../../formulas/loading.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { deriveVehicle } from "../../vehicle/derive.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { LOAD_DEFAULTS as D } from "./defaults.ts";
import { findLeastChange } from "./find-least-change.ts";
import { loadFindings } from "./load-findings.ts";
import { loadLines, type MassLine } from "./load-lines.ts";
import type {
  CheckLoad,
  LoadAgainstLimit,
  LoadInput,
  LoadLine,
  LoadResult,
  WeighbridgeTicket,
} from "./types.ts";

/**
 * Masses of the loaded vehicle: the total and each axle by moments (kg, metres behind the front axle), each
 * with its basis, against MAM, axle limits and tyres; the chance of being over; the least change that makes
 * it legal. A margin inside what an unweighed mass in running order may be out needs a weighbridge ticket.
 * A ticket in the input replaces the sum. Law of masses is local: the plate on the vehicle comes first.
 * @throws BadInput where the load does not fit the vehicle or the party
 */
export const checkLoad: CheckLoad = (input) => {
  const problems = misfits(input);
  if (problems.length > 0) throw new BadInput(problems);
  const lines = loadLines(input);
  const { masses } = input.vehicle;
  const { payload, minimumPayload, tyreLoad } = deriveVehicle(input.vehicle);
  const loads = totals(input, lines);
  const limit = (kg: number) => figure(kg, "kg", "-", { vehicle: input.vehicle.id }, "declared");
  const total = against(loads.total, loads.totalSd, limit(masses.mamKg));
  const front = against(loads.front, loads.frontSd, limit(masses.axleMaxKg.front));
  const rear = against(loads.rear, loads.rearSd, limit(masses.axleMaxKg.rear));
  const tyres =
    tyreLoad === null
      ? null
      : {
          front: against(loads.front, loads.frontSd, tyreLoad.front),
          rear: against(loads.rear, loads.rearSd, tyreLoad.rear),
        };
  const checked = [total, front, rear, ...(tyres === null ? [] : [tyres.front, tyres.rear])];
  const legal = checked.every(({ margin }) => margin.value >= -1e-9);
  const optionsKg = masses.options.reduce((sum, option) => sum + option.massKg, 0);
  const used = total.load.value - masses.miroKg - optionsKg;
  const result: LoadResult = {
    lines: lines.map((line) => shown(line, input)),
    total,
    front,
    rear,
    tyres,
    payload,
    payloadUsed: figure(
      used,
      "kg",
      "mass.payload",
      { mamKg: total.load.value, miroKg: masses.miroKg, optionsKg },
      total.load.basis,
    ),
    minimumPayload,
    needsWeighbridge: legal && input.ticket === undefined && isWithinDoubt(input, total, front, rear),
    legal,
    leastChange: findLeastChange(input, lines, { total, front, rear, tyres }),
  };
  return { result, findings: loadFindings(input, lines, result) };
};

function misfits({ vehicle, party, load, driverId, ticket }: LoadInput): InputProblem[] {
  const found: InputProblem[] = [];
  const ids = party.travellers.map(({ id }) => id);
  const litres = specsOf(vehicle, "freshWater").reduce((sum, tank) => sum + tank.litres, 0);
  const cylinders = specsOf(vehicle, "lpg")[0]?.cylinders ?? 0;
  const add = (isWrong: boolean, path: string, expected: string) => {
    if (isWrong) found.push({ path, expected });
  };
  add(
    load.waterLitres > litres,
    "load.waterLitres",
    `expected at most the ${litres} L of the fresh-water tank`,
  );
  add(
    load.lpgCylinders > cylinders,
    "load.lpgCylinders",
    `expected at most the ${cylinders} cylinders fitted`,
  );
  add(driverId !== undefined && !ids.includes(driverId), "driverId", "expected the id of a traveller");
  load.seats.forEach(({ travellerId }, k) => {
    add(!ids.includes(travellerId), `load.seats.${k}.travellerId`, "expected the id of a traveller");
  });
  const items = load.items.map(({ id }) => id);
  items.forEach((id, k) => {
    add(items.indexOf(id) !== k, `load.items.${k}.id`, "expected an id of its own");
  });
  add(
    ids.some((id, k) => ids.indexOf(id) !== k),
    "party.travellers",
    "expected an id of its own for each traveller",
  );
  add(
    ticket !== undefined && ticket.frontKg + ticket.rearKg < vehicle.masses.miroKg / 2,
    "ticket",
    "expected the axles of the loaded vehicle, kg; less than half the mass in running order cannot be it",
  );
  return found;
}

interface Totals {
  readonly total: Figure;
  readonly front: Figure;
  readonly rear: Figure;
  readonly totalSd: number;
  readonly frontSd: number;
  readonly rearSd: number;
}

function totals({ vehicle, ticket }: LoadInput, lines: readonly MassLine[]): Totals {
  if (ticket !== undefined) return weighed(ticket);
  const add = (of: (line: MassLine) => number) => lines.reduce((sum, line) => sum + of(line), 0);
  // what is not known of a mass lies on the axles as the mass does
  const share = (line: MassLine, onAxleKg: number) =>
    line.massKg === 0 ? 0 : (line.sdKg * onAxleKg) / line.massKg;
  const inputs = { lines: lines.length, wheelbaseM: vehicle.dimensions.wheelbaseM };
  return {
    total: figure(
      add(({ massKg }) => massKg),
      "kg",
      "mass.total",
      inputs,
      "computed",
    ),
    front: figure(
      add(({ frontKg }) => frontKg),
      "kg",
      "mass.axleLoads",
      inputs,
      "computed",
    ),
    rear: figure(
      add(({ rearKg }) => rearKg),
      "kg",
      "mass.axleLoads",
      inputs,
      "computed",
    ),
    totalSd: Math.sqrt(add(({ sdKg }) => sdKg ** 2)),
    frontSd: Math.sqrt(add((line) => share(line, line.frontKg) ** 2)),
    rearSd: Math.sqrt(add((line) => share(line, line.rearKg) ** 2)),
  };
}

function weighed(ticket: WeighbridgeTicket): Totals {
  const inputs = { ticket: ticket.reference, weighedAt: ticket.weighedAt };
  const read = (kg: number) => figure(kg, "kg", "-", inputs, "measured");
  const sd = D.weighedSdKg;
  return {
    total: read(ticket.frontKg + ticket.rearKg),
    front: read(ticket.frontKg),
    rear: read(ticket.rearKg),
    totalSd: sd * Math.SQRT2,
    frontSd: sd,
    rearSd: sd,
  };
}

function against(load: Figure, sdKg: number, limit: Figure): LoadAgainstLimit {
  const inputs = { limitKg: limit.value, loadKg: load.value };
  return {
    load,
    limit,
    margin: figure(limit.value - load.value, "kg", "mass.margin", inputs, "computed"),
    sdKg,
    chanceOver: figure(
      chanceOver(load.value, sdKg, limit.value),
      "chance",
      "mass.chanceOver",
      { ...inputs, sdKg },
      "computed",
    ),
  };
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

function shown(line: MassLine, { vehicle }: LoadInput): LoadLine {
  const inputs = {
    massKg: line.massKg,
    behindFrontAxleM: line.atM,
    wheelbaseM: vehicle.dimensions.wheelbaseM,
  };
  const formula = line.kind === "runningOrder" ? "-" : "mass.axleLoads";
  return {
    id: line.id,
    kind: line.kind,
    name: line.name,
    mass: figure(line.massKg, "kg", "-", {}, line.basis),
    behindFrontAxleM: line.atM,
    front: figure(
      line.frontKg,
      "kg",
      formula,
      inputs,
      line.kind === "runningOrder" ? line.basis : "computed",
    ),
    rear: figure(line.rearKg, "kg", formula, inputs, line.kind === "runningOrder" ? line.basis : "computed"),
    sdKg: line.sdKg,
    removable: line.removable,
  };
}
