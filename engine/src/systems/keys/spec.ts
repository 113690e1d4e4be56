import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { count, flag } from "../fields.ts";

const { fields, schema } = defineFields({
  /** whole sets handed over */
  sets: count(1, 4, "practice", 1),
  keysPerSet: count(1, 8, "practice", 3),
  /** bolts the door so that it may not open from inside */
  deadLock: flag("practice", false),
  alarm: flag("practice", false),
});

/** The keys that go with the vehicle. */
export type KeysSpec = z.infer<typeof schema>;

export const spec: SystemSpec<KeysSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: () => [fromAbove("keys.ignition", "cab", 0.3, -0.4, [0.12, 0.12])],
};
