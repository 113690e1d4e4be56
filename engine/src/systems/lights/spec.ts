import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  /** all the lights of the living part together */
  ledW: quantity("W", 0, 200, "practice", 15),
  /** telephones, television and the like, mean over an evening */
  otherW: quantity("W", 0, 400, "practice", 10),
  behindFrontAxleM: behindFrontAxle(1.6),
});

/** Lights and the small consumers that run beside them. */
export type LightsSpec = z.infer<typeof schema>;

export const spec: SystemSpec<LightsSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [fromAbove("lights.panel", "inside", fitted.behindFrontAxleM, 0.9, [0.25, 0.1])],
};
