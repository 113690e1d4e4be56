import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  mainsChargerA: quantity("A", 0, 120, "practice", 18),
  drivingCharge: { type: "choice", options: ["none", "relay", "dcdc"], default: "dcdc", source: "practice" },
  drivingChargeA: quantity("A", 0, 120, "practice", 30),
  behindFrontAxleM: behindFrontAxle(1.3),
  side: side("offside"),
});

/** What charges the leisure battery from the mains and from the running engine. */
export type ChargingSpec = z.infer<typeof schema>;

export const spec: SystemSpec<ChargingSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("charging.charger", "inside", fitted.behindFrontAxleM, acrossM(fitted.side, 0.8), [0.3, 0.2]),
  ],
};
