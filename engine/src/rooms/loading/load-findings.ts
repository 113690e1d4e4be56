import { figure } from "../../base/figure.ts";
import type { Finding, Mend } from "../../base/finding.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { makeFinding } from "../make-finding.ts";
import { LOAD_DEFAULTS as D } from "./defaults.ts";
import type { MassLine } from "./load-lines.ts";
import type { LoadAgainstLimit, LoadInput, LoadResult } from "./types.ts";

/** What the load check has to say: over a limit (law), over the tyres (safety), a margin in doubt, defaults used. */
export function loadFindings(
  input: LoadInput,
  lines: readonly MassLine[],
  result: LoadResult,
): readonly Finding[] {
  const mends = mendsOf(result);
  const { total, front, rear, tyres } = result;
  return [
    ...over("masses.overMam", "law", total, "total", mends),
    ...over("masses.overFrontAxle", "law", front, "front", mends),
    ...over("masses.overRearAxle", "law", rear, "rear", mends),
    ...(tyres === null ? [] : over("masses.overFrontTyres", "safety", tyres.front, "frontTyres", mends)),
    ...(tyres === null ? [] : over("masses.overRearTyres", "safety", tyres.rear, "rearTyres", mends)),
    ...overPlaces(result, mends),
    ...(result.needsWeighbridge ? [weighbridge(input, result)] : []),
    ...lightFront(result),
    ...payloadRule(result),
    ...defaultsUsed(lines),
  ];
}

function over(
  code: string,
  basis: "law" | "safety",
  checked: LoadAgainstLimit,
  about: string,
  mends: readonly Mend[],
): Finding[] {
  if (checked.margin.value >= -1e-9) return [];
  const by = figure(-checked.margin.value, "kg", "mass.margin", checked.margin.inputs, "computed");
  const inputs = { overKg: by.value, limitKg: checked.limit.value };
  const share = figure(by.value / checked.limit.value, "share", "-", inputs, "computed");
  const facts = { load: checked.load, limit: checked.limit, over: by, share };
  return [
    makeFinding("masses", code, "refuse", basis, {
      about,
      facts,
      sources: ["mass.overload.enforced"],
      mends,
    }),
  ];
}

/** More in a place than its label allows. */
function overPlaces({ places }: LoadResult, mends: readonly Mend[]): Finding[] {
  return places.flatMap(({ place, load, limit }) => {
    if (limit === null || load.value <= limit.value + 1e-9) return [];
    const inputs = { loadKg: load.value, limitKg: limit.value };
    const by = figure(load.value - limit.value, "kg", "-", inputs, "computed");
    const facts = { place, load, limit, over: by };
    const more = { about: `place.${place}`, facts, sources: ["practice"], mends };
    return [makeFinding("masses", "masses.overPlace", "refuse", "safety", more)];
  });
}

/** Too little on the steered axle. */
function lightFront({ frontShare }: LoadResult): Finding[] {
  if (frontShare.value >= D.leastFrontShare) return [];
  const least = figure(D.leastFrontShare, "share", "-", {}, "default");
  return [
    makeFinding("masses", "masses.lightFront", "condition", "policy", {
      about: "front",
      facts: { share: frontShare, least },
      sources: ["practice"],
      mends: ["masses.stowForward"],
    }),
  ];
}

function mendsOf({ legal, leastChange, total, counterOffer }: LoadResult): Mend[] {
  if (legal) return [];
  if (leastChange.outcome === "none") {
    const offer: Mend[] =
      counterOffer === null
        ? []
        : [{ code: "masses.payloadNeeded", facts: { payload: counterOffer.payloadNeeded } }];
    return [{ code: "masses.secondVehicle", facts: {} }, ...offer];
  }
  const kg = (value: number) => figure(value, "kg", "-", {}, "computed");
  const steps = leastChange.steps.map((step): Mend => {
    if (step.kind === "leaveItem")
      return { code: "masses.leaveItem", facts: { item: step.name, by: kg(step.byKg) } };
    if (step.kind === "fewerCylinders")
      return { code: "masses.fewerCylinders", facts: { to: step.to, by: kg(step.byKg) } };
    if (step.kind === "lessOfItem")
      return { code: "masses.lessOfItem", facts: { item: step.name, by: kg(step.byKg) } };
    if (step.kind === "moveItem") return { code: "masses.moveItem", facts: { item: step.name, to: step.to } };
    return {
      code: "masses.lessWater",
      facts: { to: figure(step.toLitres, "L", "-", {}, "computed"), by: kg(step.byKg) },
    };
  });
  return [
    ...steps,
    { code: "masses.thenSpare", facts: { spare: kg(total.limit.value - leastChange.after.totalKg) } },
    { code: "masses.thenWeigh", facts: {} },
  ];
}

function weighbridge({ vehicle }: LoadInput, { total, front, rear }: LoadResult): Finding {
  const { miroKg } = vehicle.masses;
  const tolerance = ruleFigure("mass.runningOrder.toleranceShare", vehicle.validFrom);
  const doubt = figure(
    tolerance.value * miroKg,
    "kg",
    "-",
    { miroKg, share: tolerance.value },
    "computed",
    tolerance.source,
  );
  const chance = [total, front, rear]
    .map(({ chanceOver }) => chanceOver)
    .sort((a, b) => b.value - a.value)[0]!;
  const facts = { margin: total.margin, doubt, chance, frontMargin: front.margin, rearMargin: rear.margin };
  return makeFinding("masses", "masses.weighbridgeNeeded", "condition", "law", {
    about: "weighbridge",
    facts,
    sources: [tolerance.source!],
    mends: ["masses.weigh"],
  });
}

function payloadRule({ payload, minimumPayload }: LoadResult): Finding[] {
  if (payload.value >= minimumPayload.value) return [];
  return [
    makeFinding("masses", "masses.payloadRule", "note", "law", {
      facts: { payload, minimum: minimumPayload },
      sources: ["mass.payload.kgPerPersonOrMetre"],
    }),
  ];
}

function defaultsUsed(lines: readonly MassLine[]): Finding[] {
  const count = lines.filter(({ basis }) => basis === "default").length;
  return count === 0
    ? []
    : [
        makeFinding("masses", "masses.defaultsUsed", "note", "policy", {
          facts: { count },
          sources: ["practice"],
          mends: ["masses.askMasses"],
        }),
      ];
}
