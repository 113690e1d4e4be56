import { type Figure, figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import type { CheckCrossing, CrossingInput } from "./abroad-types.ts";

type Crossing = CrossingInput["crossings"][number];

/**
 * Gas on ferries and in the tunnel for vehicles: kilograms against the operator's limits, the 80 % fill and the
 * gauge of fixed or refillable gas, valves shut. A refusal by the operator cannot be overridden. Operators'
 * rules change: ask before travel.
 */
export const checkCrossing: CheckCrossing = (input) => {
  const gas = gasAboard(input);
  const limits = input.crossings
    .filter(statesLimit)
    .map((crossing) => ({ kind: crossing.kind, all: allowed(crossing, input) }));
  return { result: { gas, limits }, findings: [...unsaid(input), ...gasFindings(input, gas)] };
};

function gasAboard({ vehicle }: CrossingInput): Figure {
  const kg = specsOf(vehicle, "lpg").reduce((total, each) => total + each.cylinders * each.kgEach, 0);
  return figure(kg, "kg", "-", { vehicle: vehicle.id }, "declared");
}

const isFixed = ({ vehicle }: CrossingInput) =>
  specsOf(vehicle, "lpg").some(({ arrangement }) => arrangement !== "exchange");

const containers = ({ vehicle }: CrossingInput) =>
  specsOf(vehicle, "lpg").reduce((total, { cylinders }) => total + cylinders, 0);

/** Only the short-sea line read and the tunnel state a mass; of other ferries the line is asked. */
const statesLimit = ({ kind }: Crossing) => kind !== "ferry";

/** The most gas in all that a crossing which states it takes, kg. */
function allowed({ kind, on }: Crossing, input: CrossingInput): Figure {
  if (kind !== "tunnel") return ruleFigure("crossing.shortSea.allKg", on);
  if (!isFixed(input)) return ruleFigure("crossing.tunnel.cylinder.allKg", on);
  return ruleFigure(
    containers(input) > 1 ? "crossing.tunnel.fixedTank.allKg" : "crossing.tunnel.fixedTank.oneKg",
    on,
  );
}

function unsaid({ abroad, crossings, noCrossing }: CrossingInput): Finding[] {
  if (!abroad || noCrossing || crossings.length > 0) return [];
  return [makeFinding("crossing", "crossing.notSaid", "unchecked", "policy", { mends: ["crossing.ask"] })];
}

function gasFindings(input: CrossingInput, gas: Figure): Finding[] {
  if (gas.value === 0) return [];
  const found = input.crossings.flatMap((crossing) => [
    ...tooMuch(input, crossing, gas),
    ...tooBig(input, crossing),
    ...tooMany(input, crossing),
    ...(statesLimit(crossing) ? [] : [lineNotChecked(crossing)]),
    ...(crossing.kind === "tunnel" && isFixed(input) ? fixedGas(input, crossing) : []),
    makeFinding("crossing", "crossing.shutGas", "condition", "safety", {
      about: crossing.kind,
      facts: { crossing: crossing.kind },
      sources: ["crossing.ferry.valvesShut"],
      mends: ["crossing.shutValves"],
    }),
  ]);
  return onceEach(found);
}

const lineNotChecked = ({ kind }: Crossing): Finding =>
  makeFinding("crossing", "crossing.factNotChecked", "note", "safety", {
    about: kind,
    sources: ["crossing.ferry.valvesShut"],
    mends: ["crossing.askLine"],
  });

/** There and back by the same way says a thing once. */
function onceEach(found: readonly Finding[]): Finding[] {
  const name = ({ code, about }: Finding) => `${code} ${about}`;
  return found.filter((each, k) => found.findIndex((other) => name(other) === name(each)) === k);
}

function tooMuch(input: CrossingInput, crossing: Crossing, gas: Figure): Finding[] {
  if (!statesLimit(crossing)) return [];
  const limit = allowed(crossing, input);
  if (gas.value <= limit.value) return [];
  return [
    makeFinding("crossing", "crossing.tooMuchGas", "refuse", "safety", {
      about: crossing.kind,
      facts: { crossing: crossing.kind, gas, limit },
      sources: [limit.source ?? "practice"],
      mends: ["crossing.leaveCylinder", "crossing.otherWay"],
    }),
  ];
}

/** Each cylinder that travels loose by the operator's limit for one; a fixed tank by that of all. */
function tooBig(input: CrossingInput, { kind, on }: Crossing): Finding[] {
  if (kind !== "tunnel") return [];
  const limit = ruleFigure("crossing.tunnel.cylinder.eachKg", on);
  const loose = specsOf(input.vehicle, "lpg").filter(({ arrangement }) => arrangement === "exchange");
  const biggest = Math.max(0, ...loose.map(({ kgEach }) => kgEach));
  if (biggest <= limit.value) return [];
  return [
    makeFinding("crossing", "crossing.cylinderTooBig", "refuse", "safety", {
      about: kind,
      facts: { crossing: kind, size: figure(biggest, "kg", "-", {}, "declared"), limit },
      sources: [limit.source ?? "practice"],
      mends: ["crossing.leaveCylinder", "crossing.otherWay"],
    }),
  ];
}

function tooMany(input: CrossingInput, { kind, on }: Crossing): Finding[] {
  if (kind !== "shortSeaFerry") return [];
  const most = ruleFigure("crossing.shortSea.cylinders", on);
  const count = containers(input);
  if (count <= most.value) return [];
  return [
    makeFinding("crossing", "crossing.tooManyCylinders", "refuse", "safety", {
      about: kind,
      facts: { crossing: kind, count, most: most.value },
      sources: [most.source ?? "practice"],
      mends: ["crossing.leaveCylinder", "crossing.otherWay"],
    }),
  ];
}

/** Gauge seen working and at most 80 % full; nobody looked: not yet. */
function fixedGas({ fillShare, gaugeWorks }: CrossingInput, { kind, on }: Crossing): Finding[] {
  const most = ruleFigure("crossing.tunnel.fixedTank.fillShare", on);
  const make = (code: string, severity: Finding["severity"], facts: Finding["facts"], mend: string) =>
    makeFinding("crossing", code, severity, "safety", {
      about: kind,
      facts,
      sources: [most.source!],
      mends: [mend],
    });
  if (gaugeWorks === false) return [make("crossing.noGauge", "refuse", {}, "crossing.otherWay")];
  const gauge =
    gaugeWorks === undefined ? [make("crossing.gaugeNotSeen", "unchecked", {}, "crossing.seeGauge")] : [];
  if (fillShare === undefined)
    return [...gauge, make("crossing.fillNotRead", "unchecked", { most }, "crossing.readFill")];
  if (fillShare <= most.value) return gauge;
  const fill = figure(fillShare, "-", "-", {}, "measured");
  return [...gauge, make("crossing.tooFull", "refuse", { fill, most }, "crossing.useSome")];
}
