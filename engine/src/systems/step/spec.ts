import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { onWall } from "../draw.ts";
import { behindFrontAxle, flag, side } from "../fields.ts";

const { fields, schema } = defineFields({
  electric: flag("practice", true),
  flyScreen: flag("practice", true),
  /** the door above it is described here; not where a door of its own is fitted */
  door: flag("practice", true),
  side: side("nearside"),
  behindFrontAxleM: behindFrontAxle(1.9),
});

/** The entrance step, and the door above it where none is described by itself. */
export type StepSpec = z.infer<typeof schema>;

export const spec: SystemSpec<StepSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    ...(fitted.door ? [onWall("step.door", fitted.side, fitted.behindFrontAxleM, 1.4, [0.75, 1.75])] : []),
    onWall("step.step", fitted.side, fitted.behindFrontAxleM, 0.35, [0.6, 0.12]),
  ],
};
