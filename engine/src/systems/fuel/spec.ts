import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { capOnWall } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  tankLitres: quantity("L", 20, 200, "practice", 90),
  /** grade on the label at the filler (EN 16942) */
  grade: { type: "choice", options: ["B7", "B10", "XTL", "E5", "E10"], default: "B7", source: "practice" },
  behindFrontAxleM: behindFrontAxle(0.9),
  side: side("nearside"),
});

/** The fuel tank of the vehicle and its filler. */
export type FuelSpec = z.infer<typeof schema>;

export const spec: SystemSpec<FuelSpec> = {
  fields,
  schema,
  masses: (fitted) => [
    // 0.84 kg/L: from memory, middle of the range of EN 590
    {
      name: "mass.fuel",
      massKg: fitted.tankLitres * 0.84,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: true,
      removable: false,
    },
  ],
  parts: (fitted) => [capOnWall("fuel.filler", fitted.side, fitted.behindFrontAxleM, 1)],
};
