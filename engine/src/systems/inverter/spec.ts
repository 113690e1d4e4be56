import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  /** what it gives without a break */
  ratedW: quantity("W", 100, 6000, "practice", 1500),
  efficiency: quantity("–", 0.6, 0.98, "practice", 0.9),
  /** what it draws while it is on and nothing runs */
  idleW: quantity("W", 0, 60, "practice", 8),
  source: {
    type: "choice",
    options: ["leisureBattery", "tractionBattery"],
    default: "leisureBattery",
    source: "practice",
  },
  /** what is wired behind it; the heater only with `everything` and from a traction battery */
  runs: {
    type: "choice",
    options: ["sockets", "hobAndSockets", "everything"],
    default: "sockets",
    source: "practice",
  },
  behindFrontAxleM: behindFrontAxle(1.5),
  side: side("offside"),
});

/** Makes 230 V from a battery, for the sockets and what else is wired behind it. */
export type InverterSpec = z.infer<typeof schema>;

export const spec: SystemSpec<InverterSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("inverter.box", "inside", fitted.behindFrontAxleM, acrossM(fitted.side, 0.75), [0.4, 0.25]),
  ],
};
