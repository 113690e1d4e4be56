import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { ruleFigure, rulesDuring } from "../../rules/rule-at.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import { type FrostNight, frostNights } from "./frost-nights.ts";
import type { CheckSeason, SeasonInput } from "./types.ts";
import { tyreFindings } from "./tyre-findings.ts";
import { type WinterDuty, winterDuties } from "./winter-duties.ts";
import { spanOfRuleMeets } from "./yearly-span.ts";

/** from memory: the frost valve of a water heater opens at 3 °C or a little above */
const FROST_C = 3;
/** from memory: butane gives too little gas below about this */
const BUTANE_C = 2;

/**
 * Winter tyres by country, by day, by the weather that is to be expected and by signed roads; frost in the water;
 * gas that does not boil in the cold. What the law ties to the state of the road no date breaks.
 */
export const checkSeason: CheckSeason = (input) => {
  const [first, last] = [input.from.slice(0, 10), input.to.slice(0, 10)];
  const duties = winterDuties(input);
  const nights = nightsAhead(input, duties, first);
  const cold = input.coldestNightC;
  const frost =
    cold === undefined
      ? rulesDuring("season.gb.frost", first, last).some((rule) => spanOfRuleMeets(rule, first, last))
      : cold <= FROST_C;
  const findings = [
    ...duties.flatMap((duty) => tyreFindings({ input, duty, nights })),
    ...(frost ? [frostFinding(input)] : []),
    ...butane(input),
  ];
  return { result: { winter: duties.some(({ thing }) => thing !== "slowWinterTyres"), frost }, findings };
};

/** Nights of frost, worked out only where a rule of the route turns on them. */
function nightsAhead(
  { trip }: SeasonInput,
  duties: readonly WinterDuty[],
  on: IsoDate,
): readonly FrostNight[] | null {
  if (trip === undefined || duties.every(({ rule }) => rule.binds?.weather === undefined)) return null;
  return frostNights(trip, ruleFigure("season.gb.roadFrostC", on).value);
}

function frostFinding(input: SeasonInput): Finding {
  const cold = input.coldestNightC;
  if (cold === undefined)
    return makeFinding("season", "season.frostPossible", "note", "policy", {
      sources: ["season.gb.frost"],
      mends: ["season.drain"],
    });
  const coldest = figure(cold, "°C", "-", {}, "declared");
  return makeFinding("season", "season.frost", "condition", "policy", {
    facts: { coldest },
    mends: ["season.drain"],
  });
}

function butane(input: SeasonInput): Finding[] {
  const cold = input.coldestNightC;
  if (
    cold === undefined ||
    cold > BUTANE_C ||
    specsOf(input.vehicle, "lpg").every(({ fuel }) => fuel !== "butane")
  )
    return [];
  const facts = { coldest: figure(cold, "°C", "-", {}, "declared") };
  return [makeFinding("season", "season.butane", "refuse", "policy", { facts, mends: ["season.propane"] })];
}
