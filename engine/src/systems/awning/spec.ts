import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { onWall } from "../draw.ts";
import { behindFrontAxle, flag, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  lengthM: quantity("m", 1.5, 6.5, "practice", 3.2),
  projectionM: quantity("m", 1, 3.5, "practice", 2.5),
  massKg: quantity("kg", 5, 90, "practice", 28),
  side: side("nearside"),
  behindFrontAxleM: behindFrontAxle(2.6),
  /** its mass is already in the mass in running order or among the options of the description */
  massListed: flag("practice", true),
  /** height of the cassette above ground */
  heightM: quantity("m", 1.5, 3.5, "practice", 2.35),
});

/** A wind-out awning in a cassette on the wall. */
export type AwningSpec = z.infer<typeof schema>;

export const spec: SystemSpec<AwningSpec> = {
  fields,
  schema,
  masses: (fitted) => [
    {
      name: "mass.awning",
      massKg: fitted.massKg,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: fitted.massListed,
      removable: false,
    },
  ],
  parts: (fitted) => [
    onWall("awning.cassette", fitted.side, fitted.behindFrontAxleM, fitted.heightM, [fitted.lengthM, 0.14]),
  ],
};
