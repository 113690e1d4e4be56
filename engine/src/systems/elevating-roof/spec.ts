import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  bed: flag("practice", true),
  lengthM: quantity("m", 1, 4, "practice", 2.4),
  behindFrontAxleM: behindFrontAxle(1.6),
});

/** A roof that is raised to stand and sleep under. */
export type ElevatingRoofSpec = z.infer<typeof schema>;

export const spec: SystemSpec<ElevatingRoofSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("elevatingRoof.roof", "roof", fitted.behindFrontAxleM, 0, [fitted.lengthM, 1.2]),
  ],
};
