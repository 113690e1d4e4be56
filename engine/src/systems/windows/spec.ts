import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove, onWall } from "../draw.ts";
import { behindFrontAxle, count } from "../fields.ts";

const { fields, schema } = defineFields({
  hinged: count(0, 16, "practice", 4),
  rooflights: count(0, 6, "practice", 1),
  blinds: count(0, 25, "practice", 6),
  behindFrontAxleM: behindFrontAxle(2.2),
});

/** Hinged windows, rooflights and their blinds. */
export type WindowsSpec = z.infer<typeof schema>;

export const spec: SystemSpec<WindowsSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    ...(fitted.hinged > 0
      ? [onWall("windows.nearside", "nearside", fitted.behindFrontAxleM, 1.75, [0.9, 0.5])]
      : []),
    ...(fitted.hinged > 1
      ? [onWall("windows.offside", "offside", fitted.behindFrontAxleM, 1.75, [0.9, 0.5])]
      : []),
    ...(fitted.rooflights > 0
      ? [fromAbove("windows.rooflight", "roof", fitted.behindFrontAxleM, 0, [0.4, 0.4])]
      : []),
  ],
};
