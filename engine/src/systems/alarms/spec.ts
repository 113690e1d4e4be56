import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag } from "../fields.ts";

const { fields, schema } = defineFields({
  smoke: count(0, 4, "practice", 1),
  carbonMonoxide: count(0, 4, "practice", 1),
  gas: count(0, 2, "practice", 0),
  extinguishers: count(0, 3, "practice", 1),
  fireBlanket: flag("practice", true),
  /** earliest date on the alarms at which one must be renewed */
  replaceBy: { type: "date", source: "practice" },
  behindFrontAxleM: behindFrontAxle(2.4),
});

/** Smoke, carbon monoxide and gas alarms, and what puts out a fire. */
export type AlarmsSpec = z.infer<typeof schema>;

export const spec: SystemSpec<AlarmsSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("alarms.alarm", "inside", fitted.behindFrontAxleM, 0, [0.14, 0.14]),
    ...(fitted.extinguishers > 0 ? [fromAbove("alarms.extinguisher", "inside", 1.3, 0.5, [0.12, 0.12])] : []),
  ],
};
