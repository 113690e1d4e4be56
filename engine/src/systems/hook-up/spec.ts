import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, capOnWall, fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  inletA: quantity("A", 6, 32, "practice", 16),
  leadLengthM: quantity("m", 5, 50, "practice", 25),
  leadAreaMm2: quantity("mm²", 1, 6, "practice", 2.5),
  /** residual current at which the breaker trips */
  rcdMa: quantity("mA", 10, 300, "practice", 30),
  leads: count(0, 4, "practice", 1),
  /** two-pin adaptor and polarity tester for abroad */
  adaptors: count(0, 4, "practice", 1),
  hasDrum: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(3.4),
  side: side("offside"),
});

/** The 230 V inlet, its lead and the consumer unit behind it. */
export type HookUpSpec = z.infer<typeof schema>;

export const spec: SystemSpec<HookUpSpec> = {
  fields,
  schema,
  masses: (fitted) =>
    fitted.leads === 0
      ? []
      : [
          {
            name: "mass.hookUp.lead",
            massKg: 6 * fitted.leads,
            behindFrontAxleM: fitted.behindFrontAxleM,
            // standard equipment
            inMiro: true,
            removable: true,
          },
        ],
  parts: (fitted) => [
    capOnWall("hookUp.inlet", fitted.side, fitted.behindFrontAxleM, 0.95),
    fromAbove(
      "hookUp.consumerUnit",
      "inside",
      fitted.behindFrontAxleM,
      acrossM(fitted.side, 0.85),
      [0.3, 0.12],
    ),
  ],
};
