import { type Figure, figure } from "../../base/figure.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays, anniversary } from "../../base/years.ts";
import { daysOfChange, ruleAt, ruleFigure, ruleText } from "../../rules/rule-at.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import type { Driver } from "../situation.ts";

/** Why a driver may drive no more: the end of the code of the finding. */
export type Limit =
  | "categoryTooSmall"
  | "noCarCategory"
  | "c1EndsAtSeventy"
  | "zeroEmissionAbroad"
  | "visitorTooHeavy";

interface Entitled {
  readonly upTo: Figure;
  readonly why: Limit;
}

/**
 * The largest plated mass that a driver may drive on every day of the hire, kg, and what holds it there.
 * A Great Britain licence is judged by Great Britain's rules wherever the road leads.
 */
export function entitledMass(
  driver: Driver,
  vehicle: VehicleDescription,
  countries: readonly string[],
  first: IsoDate,
  last: IsoDate,
): Entitled {
  return daysOfChange("licence.", first, last)
    .map((day) => entitledBy(day, driver, vehicle, countries, first, last))
    .reduce((least, each) => (each.upTo.value < least.upTo.value ? each : least));
}

/** By the rules of one day of the hire. */
function entitledBy(
  day: IsoDate,
  driver: Driver,
  vehicle: VehicleDescription,
  countries: readonly string[],
  first: IsoDate,
  last: IsoDate,
): Entitled {
  const { licence } = driver;
  const covers = (...wanted: string[]) =>
    isHeldThroughout(
      licence.categories.filter(({ category }) => wanted.includes(category)),
      first,
      last,
    );
  if (!covers("B", "BE", "C1", "C1E", "C"))
    return { upTo: figure(0, "kg", "-", {}, "declared", "licence.gb.b.maxMamKg"), why: "noCarCategory" };
  const b = ruleFigure("licence.gb.b.maxMamKg", day);
  if (licence.issuedBy === "other")
    return { upTo: ruleFigure("licence.gb.visitor.maxMamKg", day), why: "visitorTooHeavy" };
  const heavy = heavyEntitlement(driver, covers("C1", "C1E", "C"), day, last);
  if (heavy === "yes") return { upTo: ruleFigure("licence.gb.c1.maxMamKg", day), why: "categoryTooSmall" };
  const electric = zeroEmission(driver, vehicle, day);
  if (electric !== undefined) {
    return countries.every((country) => country === "GB")
      ? { upTo: electric, why: "categoryTooSmall" }
      : { upTo: b, why: "zeroEmissionAbroad" };
  }
  return { upTo: b, why: heavy === "endsAtSeventy" ? "c1EndsAtSeventy" : "categoryTooSmall" };
}

/** Whether these spans, one after the other without a gap, hold from the first day to the last: a renewal follows on. */
function isHeldThroughout(
  spans: readonly { readonly from: IsoDate; readonly to: IsoDate }[],
  first: IsoDate,
  last: IsoDate,
): boolean {
  let missing = first;
  for (const { from, to } of [...spans].sort((a, b) => (a.from < b.from ? -1 : 1)))
    if (from <= missing && to >= missing) missing = addDays(to, 1);
  return missing > last;
}

/**
 * C1 by the licence, or by a car test of before 1997 on a licence not looked at yet (a looked-at licence that
 * lists no C1 has lost it). C1 from a car test ends at 70 unless the licence was seen with it after that day.
 */
function heavyEntitlement(
  driver: Driver,
  isListed: boolean,
  day: IsoDate,
  last: IsoDate,
): "yes" | "no" | "endsAtSeventy" {
  const { licence, born } = driver;
  const isGrandfathered =
    licence.firstCarEntitlement < ruleText("licence.gb.grandfather.testBefore", day) &&
    licence.issuedBy !== "EEA";
  if (!isGrandfathered) return isListed ? "yes" : "no";
  if (!isListed && licence.checkedOn !== undefined) return "no";
  const ends = anniversary(born, ruleFigure("licence.gb.grandfather.endsAtAge", day).value);
  if (last < ends) return "yes";
  const seenRenewed = isListed && licence.checkedOn !== undefined && licence.checkedOn >= ends;
  return seenRenewed ? "yes" : "endsAtSeventy";
}

const zeroEmission = (driver: Driver, vehicle: VehicleDescription, day: IsoDate): Figure | undefined =>
  driver.licence.issuedBy === "GB" ? zeroEmissionAllowance(vehicle, day) : undefined;

/** What category B reaches to with this vehicle's fuel by the allowance for zero emissions, kg; undefined where none holds on the day. */
export function zeroEmissionAllowance(vehicle: VehicleDescription, day: IsoDate): Figure | undefined {
  const rule = ruleAt("licence.gb.zeroEmission.maxMamKg", day);
  if (rule === undefined) return undefined;
  const fuels = ruleText("licence.gb.zeroEmission.fuels", day).split(",");
  return fuels.includes(vehicle.fuel) ? ruleFigure(rule.id, day) : undefined;
}
