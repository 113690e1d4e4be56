import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { count, flag, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  reversingCamera: flag("practice", false),
  /** levelling ramps carried */
  ramps: count(0, 4, "practice", 2),
  warningTriangles: count(0, 4, "practice", 1),
  highVisVests: count(0, 9, "practice", 2),
  /** charge of the battery that starts the engine; of one that drives on its battery, that of its 12 V */
  starterAh: quantity("Ah", 20, 300, "practice", 90),
  /** what alarm, clock and locks draw from it while the vehicle stands */
  starterStandingMa: quantity("mA", 0, 1000, "practice", 40),
});

/** The cab and what it takes to drive something of this size. */
export type CabSpec = z.infer<typeof schema>;

export const spec: SystemSpec<CabSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: () => [fromAbove("cab.dashboard", "cab", -0.2, 0, [0.3, 1.4])],
};
