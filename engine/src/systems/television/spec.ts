import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle } from "../fields.ts";

const { fields, schema } = defineFields({
  aerial: { type: "choice", options: ["fixed", "mast", "dish"], default: "fixed", source: "practice" },
  behindFrontAxleM: behindFrontAxle(2.9),
});

/** The television and its aerial. */
export type TelevisionSpec = z.infer<typeof schema>;

export const spec: SystemSpec<TelevisionSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [fromAbove("television.aerial", "roof", fitted.behindFrontAxleM, 0.5, [0.35, 0.35])],
};
