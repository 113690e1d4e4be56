import { type Figure, figure } from "../../base/figure.ts";
import { roundPence } from "../../base/money.ts";
import type { RepairCost, SettlementInput } from "./types.ts";

type Cost = number | RepairCost;
type Labour = NonNullable<SettlementInput["terms"]["tariff"]["labour"]>;

/**
 * What of a repair is charged, in pence: parts at the share of their value that is left, work by the labour
 * policy. A sum that is not divided is taken as parts, to the hirer's good.
 */
export function chargeOfRepair(cost: Cost, share: number, labour: Labour): number {
  if (typeof cost === "number") return roundPence(cost * share);
  const work = labour === "inFull" ? cost.labourPence : roundPence(cost.labourPence * share);
  return roundPence(cost.partsPence * share) + work;
}

/** The same with its figures, as the working of a line shows them. */
export function workingOfRepair(cost: Cost, labour: Labour, from: "estimate" | "invoice"): Figure[] {
  const pence = (value: number, inputs: Figure["inputs"]) =>
    figure(value, "pence", "-", inputs, from === "invoice" ? "measured" : "declared");
  if (typeof cost === "number") return [pence(cost, { from })];
  return [
    pence(cost.partsPence, { from, of: "parts" }),
    pence(cost.labourPence, { from, of: "labour", labour }),
  ];
}
