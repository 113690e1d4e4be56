import * as z from "zod/mini";
import { BadInput } from "../base/bad-input.ts";
import { describeSource } from "../sources/register.ts";
import { AIR_FORMULAS } from "./air-book.ts";
import { BATTERY_FORMULAS } from "./battery.ts";
import { BRIEFING_FORMULAS } from "./briefing.ts";
import { CABLE_FORMULAS } from "./cable.ts";
import { CALENDAR_FORMULAS } from "./calendar.ts";
import { CALIBRATION_FORMULAS } from "./calibration.ts";
import { CLIMATE_FORMULAS } from "./climate-book.ts";
import { DIAGNOSIS_FORMULAS } from "./diagnosis-book.ts";
import type { FormulaEntry, FormulaValue } from "./entry.ts";
import { FUEL_FORMULAS } from "./fuel.ts";
import { GAS_FORMULAS } from "./gas-book.ts";
import { HEAT_FORMULAS } from "./heat.ts";
import { LEVEL_FORMULAS } from "./level.ts";
import { LOADING_FORMULAS } from "./loading.ts";
import { MAINS_FORMULAS } from "./mains.ts";
import { MASS_FORMULAS } from "./mass.ts";
import { MONEY_FORMULAS } from "./money.ts";
import { nearestIds } from "./nearest-ids.ts";
import { SOLAR_FORMULAS } from "./solar.ts";
import { STATISTICS_FORMULAS } from "./statistics.ts";
import { SUN_FORMULAS } from "./sun-book.ts";
import { TRIP_FORMULAS } from "./trip.ts";
import { TYRE_FORMULAS } from "./tyre.ts";
import { VIN_FORMULAS } from "./vin.ts";
import { WATER_FORMULAS } from "./water.ts";
import { WORTH_FORMULAS } from "./worth.ts";

const BOOK: readonly FormulaEntry[] = [
  ...SUN_FORMULAS,
  ...SOLAR_FORMULAS,
  ...AIR_FORMULAS,
  ...HEAT_FORMULAS,
  ...WATER_FORMULAS,
  ...BATTERY_FORMULAS,
  ...CABLE_FORMULAS,
  ...MAINS_FORMULAS,
  ...GAS_FORMULAS,
  ...MASS_FORMULAS,
  ...LOADING_FORMULAS,
  ...TYRE_FORMULAS,
  ...FUEL_FORMULAS,
  ...LEVEL_FORMULAS,
  ...VIN_FORMULAS,
  ...CALENDAR_FORMULAS,
  ...STATISTICS_FORMULAS,
  ...WORTH_FORMULAS,
  ...CLIMATE_FORMULAS,
  ...BRIEFING_FORMULAS,
  ...DIAGNOSIS_FORMULAS,
  ...TRIP_FORMULAS,
  ...CALIBRATION_FORMULAS,
  ...MONEY_FORMULAS,
];
const BY_ID = new Map(BOOK.map((found) => [found.id, found]));
if (BY_ID.size !== BOOK.length) throw new Error("formula book: an id is registered twice");

export interface FormulaAnswer {
  readonly value: FormulaValue;
  readonly unit: string;
  /** the source in words, with the place in it */
  readonly source: string;
}

/** What the list of formulas says of one; `args` is JSON Schema with the valid ranges. */
export interface FormulaListing {
  readonly id: string;
  readonly unit: string;
  readonly source: string;
  /** id in the register of sources */
  readonly sourceId: string;
  readonly args: z.core.JSONSchema.BaseSchema;
}

const sourceLine = ({ source, clause }: FormulaEntry) =>
  clause === "" ? describeSource(source) : `${describeSource(source)}; ${clause}`;

/**
 * Computes a formula of the book. Arguments are plain data with the unit in the name; a missing, unknown,
 * impossible or out-of-range one, or an unknown id, throws BadInput that names it.
 */
export function formula(id: string, args: unknown): FormulaAnswer {
  const found = BY_ID.get(id);
  if (found === undefined) {
    const near = nearestIds(id, [...BY_ID.keys()]);
    throw new BadInput([{ path: "id", expected: `no formula "${id}"; near it: ${near.join(", ")}` }]);
  }
  const value = found.compute(args);
  if (!isFinitely(value)) {
    const names = Object.keys(Object(args)).join(", ");
    throw new BadInput([
      {
        path: names,
        expected: "expected values that are not so near 0 or so large that the answer is no number",
      },
    ]);
  }
  return { value, unit: found.unit, source: sourceLine(found) };
}

function isFinitely(value: FormulaValue | null | readonly number[]): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (value === null || typeof value === "string") return true;
  return Object.values(value).every(isFinitely);
}

/** All formulas, in the order of the book. */
export function listFormulas(): readonly FormulaListing[] {
  return BOOK.map((found) => ({
    id: found.id,
    unit: found.unit,
    source: sourceLine(found),
    sourceId: found.source,
    args: z.toJSONSchema(found.schema),
  }));
}
