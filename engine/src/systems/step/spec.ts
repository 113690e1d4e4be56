import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { onWall } from "../draw.ts";
import { behindFrontAxle, flag, side } from "../fields.ts";

const { fields, schema } = defineFields({
  electric: flag("practice", true),
  flyScreen: flag("practice", true),
  side: side("nearside"),
  behindFrontAxleM: behindFrontAxle(1.9),
});

/** The entrance step and the door above it. */
export type StepSpec = z.infer<typeof schema>;

export const spec: SystemSpec<StepSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    onWall("step.door", fitted.side, fitted.behindFrontAxleM, 1.4, [0.75, 1.75]),
    onWall("step.step", fitted.side, fitted.behindFrontAxleM, 0.35, [0.6, 0.12]),
  ],
};
