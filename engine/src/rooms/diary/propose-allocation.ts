import { spend } from "../../base/budget.ts";
import { drawsFor } from "../../base/draws.ts";
import { makeFinding } from "../make-finding.ts";
import { type AllocationModel, modelAllocation } from "./allocation-model.ts";
import type { Allocation, AllocationInput, ProposeAllocation, RefusedWhy } from "./allocation-types.ts";
import { checkPlan } from "./check-plan.ts";
import { findFewest, findPlan } from "./find-allocation.ts";
import { parseAllocation } from "./parse-allocation.ts";
import type { Seating } from "./seating.ts";
import { horizonOf, sellableOf } from "./sellable.ts";

/**
 * Seats hires on vehicles: every hire on as few vehicles as possible, or the plan of most value, then fewest moves, then
 * most sellable gaps. Every answer has been through {@link checkPlan}; one that does not hold is a bug and throws.
 * @throws BadInput that names each field
 */
export const proposeAllocation: ProposeAllocation = (given, budget = {}) => {
  const input = parseAllocation(given);
  const model = modelAllocation(input);
  const fewest = input.objective === "fewest-vehicles";
  const found = (fewest ? findFewest : findPlan)(model, {
    fewest,
    draw: drawsFor(budget.seed ?? 1, "allocate"),
    isOver: spend(budget, 20_000),
    ...(budget.onProgress === undefined ? {} : { onProgress: budget.onProgress }),
  });
  const plan = writePlan(input, model, found.seating, found);
  const faults = checkPlan(input, plan);
  if (faults.length > 0)
    throw new Error(`allocate: the plan does not hold: ${JSON.stringify(faults.slice(0, 5))}`);
  return {
    result: { ...plan, milliseconds: Math.round(budget.elapsedMs?.() ?? 0) },
    findings: plan.refused.map(({ hire, why }) =>
      makeFinding("diary", "diary.notSeated", "refuse", "policy", {
        about: hire,
        facts: { hire, why },
        mends: ["diary.changeSomething"],
      }),
    ),
  };
};

function writePlan(
  input: AllocationInput,
  model: AllocationModel,
  seating: Seating,
  bounds: Pick<Allocation, "lowerBound" | "upperBound" | "proven">,
): Allocation {
  const vehicleOf: number[] = [];
  const mayGo: boolean[] = [];
  model.given.forEach((given, hire) => {
    vehicleOf[given] = seating.on[hire]!;
    mayGo[given] = model.allowed[hire]!.length > 0;
  });
  const seated = input.hires.flatMap((hire, k) =>
    vehicleOf[k]! < 0 ? [] : [{ hire: hire.id, vehicle: input.vehicles[vehicleOf[k]!]!.id }],
  );
  const refused = input.hires.flatMap((hire, k) =>
    vehicleOf[k]! < 0 ? [{ hire: hire.id, why: whyRefused(hire.vehicles.length > 0, mayGo[k]!) }] : [],
  );
  const moves = input.hires.flatMap((hire, k) => {
    const to = vehicleOf[k]! < 0 ? undefined : input.vehicles[vehicleOf[k]!]!.id;
    return hire.now === undefined || to === undefined || to === hire.now
      ? []
      : [{ hire: hire.id, from: hire.now, to }];
  });
  const value = input.hires.reduce((sum, hire, k) => sum + (vehicleOf[k]! < 0 ? 0 : hire.value), 0);
  const most = input.hires.reduce((sum, hire, k) => sum + (mayGo[k]! ? hire.value : 0), 0);
  const horizon = horizonOf(model);
  const gaps = input.vehicles.map((_, vehicle) => sellableOf(seating, vehicle, horizon));
  return {
    seated,
    refused,
    moves,
    value,
    vehiclesUsed: new Set(seated.map(({ vehicle }) => vehicle)).size,
    lowerBound: bounds.lowerBound,
    upperBound: Math.max(value, Math.min(bounds.upperBound, most)),
    proven: bounds.proven,
    sellableGaps: gaps.reduce((sum, each) => sum + each, 0),
  };
}

const whyRefused = (isListed: boolean, mayGo: boolean): RefusedWhy =>
  isListed ? (mayGo ? "vehiclesTaken" : "vehiclesUnavailable") : "noVehicleAllowed";
