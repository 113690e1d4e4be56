import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag } from "../fields.ts";

const { fields, schema } = defineFields({
  ramps: count(0, 4, "practice", 2),
  chocks: count(0, 4, "practice", 2),
  /** legs under the body: none, let down with a crank at the rear, or driven ones that lift and level */
  jacks: { type: "choice", options: ["none", "crank", "hydraulic"], default: "none", source: "practice" },
  levelIndicator: flag("practice", true),
  /** where ramps and chocks are kept */
  behindFrontAxleM: behindFrontAxle(4.8),
});

/** What brings the parked vehicle level and keeps it there. */
export type LevellingSpec = z.infer<typeof schema>;

export const spec: SystemSpec<LevellingSpec> = {
  fields,
  schema,
  masses: (fitted) =>
    fitted.ramps + fitted.chocks === 0
      ? []
      : [
          {
            name: "mass.levelling.ramps",
            // about 2.5 kg a ramp and 1 kg a chock: practice
            massKg: 2.5 * fitted.ramps + fitted.chocks,
            behindFrontAxleM: fitted.behindFrontAxleM,
            // standard equipment
            inMiro: true,
            removable: true,
          },
        ],
  parts: (fitted) =>
    fitted.jacks === "none"
      ? []
      : [fromAbove("levelling.jacks", "underside", fitted.behindFrontAxleM, 0, [0.2, 1.4])],
};
