import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { capOnWall } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  tankLitres: quantity("L", 5, 60, "practice", 20),
  /** about 10 L for 6,000 to 8,000 km */
  litresPer1000Km: quantity("L/1000 km", 0.3, 6, "practice", 1.5),
  behindFrontAxleM: behindFrontAxle(0.7),
  side: side("nearside"),
});

/** The tank of diesel exhaust fluid (DEF, ISO 22241) and its filler. */
export type DefSpec = z.infer<typeof schema>;

export const spec: SystemSpec<DefSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [capOnWall("def.filler", fitted.side, fitted.behindFrontAxleM, 0.75, 0.12)],
};
