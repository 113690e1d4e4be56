import { figure } from "../../base/figure.ts";
import { deriveVehicle } from "../../vehicle/derive.ts";
import { type ChangeModel, changeGroups } from "./change-groups.ts";
import type { MassLine } from "./load-lines.ts";
import type { CounterOffer, LoadInput, LoadResult } from "./types.ts";

/**
 * What to offer where nothing legal remains: by how much this vehicle falls short with everything off that can
 * come off, the payload that one vehicle would need for all of it, and how many like this one would share it.
 */
export function makeCounterOffer(
  input: LoadInput,
  lines: readonly MassLine[],
  { total }: Pick<LoadResult, "total">,
): CounterOffer {
  const { masses } = input.vehicle;
  const model: ChangeModel = { input, lines, limited: [] };
  const offKg = changeGroups(model).reduce((sum, group) => sum + Math.max(...group.map(({ kg }) => kg)), 0);
  const leastKg = total.load.value - offKg;
  const optionsKg = masses.options.reduce((sum, option) => sum + option.massKg, 0);
  const usedKg = total.load.value - masses.miroKg - optionsKg;
  const payloadKg = deriveVehicle(input.vehicle).payload.value;
  const computed = (value: number, unit: string, inputs: Readonly<Record<string, number>>) =>
    figure(value, unit, "-", inputs, "computed");
  return {
    short: computed(Math.max(0, leastKg - masses.mamKg), "kg", { leastKg, mamKg: masses.mamKg }),
    payloadNeeded: computed(usedKg, "kg", { usedKg }),
    vehiclesLikeThis: computed(payloadKg > 0 ? Math.max(2, Math.ceil(usedKg / payloadKg)) : 2, "count", {
      usedKg,
      payloadKg,
    }),
  };
}
