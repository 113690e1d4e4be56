import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  /** heat that it takes out of the cabin */
  coolingW: quantity("W", 500, 5000, "practice", 1700),
  /** what it draws from 230 V meanwhile */
  mainsW: quantity("W", 200, 2500, "practice", 700),
  /** current of the first moment, when its motor starts */
  startA: quantity("A", 1, 40, "practice", 15),
  remote: flag("practice", true),
  massKg: quantity("kg", 10, 80, "practice", 32),
  /** its mass is already in the mass in running order or among the options of the description */
  massListed: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(2.6),
});

/** An air conditioner on the roof, run from 230 V. */
export type AirConditioningSpec = z.infer<typeof schema>;

export const spec: SystemSpec<AirConditioningSpec> = {
  fields,
  schema,
  masses: (fitted) => [
    {
      name: "mass.airConditioning",
      massKg: fitted.massKg,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: fitted.massListed,
      removable: false,
    },
  ],
  parts: (fitted) => [
    fromAbove("airConditioning.roofUnit", "roof", fitted.behindFrontAxleM, 0, [0.9, 0.6]),
    fromAbove("airConditioning.outlet", "inside", fitted.behindFrontAxleM, 0, [0.5, 0.5]),
  ],
};
