import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { capOnWall, fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  litres: quantity("L", 5, 400, "practice"),
  pumpW: quantity("W", 0, 200, "practice", 45),
  pumpLitresPerMin: quantity("L/min", 1, 40, "practice", 7),
  /** middle of the tank */
  behindFrontAxleM: behindFrontAxle(2.6),
  fillerBehindFrontAxleM: behindFrontAxle(2.9),
  side: side("offside"),
});

/** The fresh-water tank, its filler and pump. */
export type FreshWaterSpec = z.infer<typeof schema>;

export const spec: SystemSpec<FreshWaterSpec> = {
  fields,
  schema,
  masses: (fitted) => [
    {
      name: "mass.freshWater",
      massKg: fitted.litres,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: false,
      removable: true,
    },
  ],
  parts: (fitted) => [
    capOnWall("freshWater.filler", fitted.side, fitted.fillerBehindFrontAxleM, 1.05),
    fromAbove("freshWater.drain", "underside", fitted.behindFrontAxleM, 0, [0.15, 0.15]),
  ],
};
