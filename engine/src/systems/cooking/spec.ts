import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  energy: { type: "choice", options: ["gas", "electric"], default: "gas", source: "practice" },
  burners: count(1, 4, "practice", 2),
  gasKwEach: quantity("kW", 0, 4, "practice", 1.8),
  /** of an electric hob: full power of one induction plate */
  electricKwEach: quantity("kW", 0, 4, "practice", 1.8),
  oven: flag("practice", false),
  /** glass lid over the hob */
  glassLid: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(2.0),
  side: side("nearside"),
});

/** The hob, and the oven and grill where there is one. */
export type CookingSpec = z.infer<typeof schema>;

export const spec: SystemSpec<CookingSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("cooking.hob", "inside", fitted.behindFrontAxleM, acrossM(fitted.side, 0.7), [0.5, 0.4]),
  ],
};
