import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, capOnWall, fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, quantity, side, usualBy } from "../fields.ts";

const { fields, schema } = defineFields({
  source: {
    type: "choice",
    options: ["gas", "gasElectric", "diesel", "dieselElectric", "electric"],
    source: "practice",
  },
  /** heat from the fuel, gas or diesel */
  gasKw: usualBy(quantity("kW", 0, 10, "practice", 4), "source", { diesel: 2, electric: 0 }),
  /** highest electric stage; a stage at half of it is usual */
  electricW: usualBy(quantity("W", 0, 3600, "practice", 1800), "source", { gas: 0, diesel: 0 }),
  efficiency: quantity("–", 0.5, 1, "practice", 0.9),
  fanW: quantity("W", 0, 120, "practice", 18),
  standbyW: quantity("W", 0, 10, "practice", 1),
  withHotWater: flag("practice", false),
  /** temperature at which the frost valve drops the water; 0 without one */
  frostValveC: quantity("°C", 0, 10, "practice", 3),
  behindFrontAxleM: behindFrontAxle(3.1),
  side: side("offside"),
});

/** The heater of the living part; with `withHotWater` the same appliance heats the water. */
export type HeatingSpec = z.infer<typeof schema>;

export const spec: SystemSpec<HeatingSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("heating.heater", "inside", fitted.behindFrontAxleM, acrossM(fitted.side, 0.7), [0.5, 0.45]),
    ...(fitted.source === "electric"
      ? []
      : [capOnWall("heating.flue", fitted.side, fitted.behindFrontAxleM, 0.75, 0.14)]),
  ],
};
