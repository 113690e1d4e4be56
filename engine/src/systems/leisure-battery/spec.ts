import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, quantity, side, usualBy } from "../fields.ts";

const { fields, schema } = defineFields({
  chemistry: { type: "choice", options: ["agm", "gel", "flooded", "lfp"], source: "practice" },
  ratedAh: quantity("Ah", 20, 1000, "practice"),
  /** hours of the discharge for which `ratedAh` is stated */
  ratedHours: quantity("h", 1, 100, "practice", 20),
  peukert: usualBy(quantity("–", 1, 1.6, "practice", 1.2), "chemistry", { lfp: 1.05 }),
  /** share that may be used before the battery suffers: about half for lead-acid */
  usableShare: usualBy(quantity("–", 0.1, 1, "practice", 0.5), "chemistry", { lfp: 0.9 }),
  /** voltage at which the system switches its consumers off */
  cutOffV: usualBy(quantity("V", 9, 12.8, "practice", 10.5), "chemistry", { lfp: 11.5 }),
  /** can be switched off with one isolator */
  isolator: flag("practice", true),
  massKg: usualBy(quantity("kg", 3, 250, "practice", 27), "chemistry", { lfp: 12 }),
  behindFrontAxleM: behindFrontAxle(0.9),
  side: side("nearside"),
});

/** The battery of the living part: lead-acid or lithium iron phosphate, as data. */
export type LeisureBatterySpec = z.infer<typeof schema>;

export const spec: SystemSpec<LeisureBatterySpec> = {
  fields,
  schema,
  masses: (fitted) => [
    {
      name: "mass.leisureBattery",
      massKg: fitted.massKg,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: true,
      removable: false,
    },
  ],
  parts: (fitted) => [
    fromAbove(
      "leisureBattery.battery",
      "cab",
      fitted.behindFrontAxleM,
      acrossM(fitted.side, 0.5),
      [0.36, 0.2],
    ),
  ],
};
