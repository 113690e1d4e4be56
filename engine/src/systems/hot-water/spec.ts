import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  litres: quantity("L", 3, 40, "practice", 10),
  source: {
    type: "choice",
    options: ["gas", "gasElectric", "diesel", "dieselElectric", "electric"],
    source: "practice",
  },
  gasKw: quantity("kW", 0, 10, "practice", 4),
  electricW: quantity("W", 0, 3600, "practice", 900),
  /** temperature at which the frost valve drops the water; 0 without one */
  frostValveC: quantity("°C", 0, 10, "practice", 3),
  behindFrontAxleM: behindFrontAxle(3.1),
  side: side("offside"),
});

/** The store of hot water and what heats it. */
export type HotWaterSpec = z.infer<typeof schema>;

export const spec: SystemSpec<HotWaterSpec> = {
  fields,
  schema,
  // filled from the fresh water, and the load plan counts the water carried once
  masses: () => [],
  parts: (fitted) =>
    fitted.frostValveC > 0
      ? [
          fromAbove(
            "hotWater.frostValve",
            "inside",
            fitted.behindFrontAxleM + 0.35,
            acrossM(fitted.side, 0.7),
            [0.12, 0.12],
          ),
        ]
      : [
          fromAbove(
            "hotWater.heater",
            "inside",
            fitted.behindFrontAxleM,
            acrossM(fitted.side, 0.7),
            [0.35, 0.35],
          ),
        ],
};
