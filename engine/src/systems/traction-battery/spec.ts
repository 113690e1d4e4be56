import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, capOnWall } from "../draw.ts";
import { behindFrontAxle, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  usableKwh: quantity("kWh", 5, 250, "practice"),
  /** laden, on the road, at 20 °C */
  kwhPer100Km: quantity("kWh/100 km", 12, 90, "practice", 32),
  /** share that is kept for the unforeseen when a range is told */
  reserveShare: quantity("–", 0, 0.5, "practice", 0.15),
  /** what its lead takes from the post of a pitch; 0 where it is not charged there */
  postChargeA: quantity("A", 0, 32, "practice", 10),
  /** most power at a charge point for direct current */
  fastChargeKw: quantity("kW", 0, 350, "practice", 80),
  /** converter that feeds the battery of the living part; 0 without one */
  dcdcW: quantity("W", 0, 3000, "practice", 500),
  dcdcWhen: { type: "choice", options: ["driving", "always"], default: "driving", source: "practice" },
  /** inlet for charging */
  behindFrontAxleM: behindFrontAxle(-0.4),
  side: side("offside"),
});

/** The battery that drives the vehicle. Its mass is in the mass in running order. */
export type TractionBatterySpec = z.infer<typeof schema>;

/** Road that a full battery does at 20 °C before it comes to its reserve, km. */
export function rangeKm({ usableKwh, kwhPer100Km, reserveShare }: TractionBatterySpec): number {
  return (usableKwh * (1 - reserveShare) * 100) / kwhPer100Km;
}

export const spec: SystemSpec<TractionBatterySpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    {
      ...capOnWall("tractionBattery.inlet", fitted.side, fitted.behindFrontAxleM, 0.9, 0.14),
      yM: acrossM(fitted.side),
    },
  ],
};
