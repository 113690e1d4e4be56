import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { count, flag } from "../fields.ts";

const { fields, schema } = defineFields({
  reversingCamera: flag("practice", false),
  /** levelling ramps carried */
  ramps: count(0, 4, "practice", 2),
  warningTriangles: count(0, 4, "practice", 1),
  highVisVests: count(0, 9, "practice", 2),
});

/** The cab and what it takes to drive something of this size. */
export type CabSpec = z.infer<typeof schema>;

export const spec: SystemSpec<CabSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: () => [fromAbove("cab.dashboard", "cab", -0.2, 0, [0.3, 1.4])],
};
