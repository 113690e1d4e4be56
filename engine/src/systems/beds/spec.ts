import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  madeUp: count(0, 4, "practice", 1),
  /** drop-down or overcab bed with a ladder */
  upper: flag("practice", false),
  maxKgEach: quantity("kg", 60, 400, "practice", 200),
  behindFrontAxleM: behindFrontAxle(4.2),
});

/** Beds, with the ladder and net of an upper one. */
export type BedsSpec = z.infer<typeof schema>;

export const spec: SystemSpec<BedsSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [fromAbove("beds.bed", "inside", fitted.behindFrontAxleM, 0, [1.3, 1.85])],
};
