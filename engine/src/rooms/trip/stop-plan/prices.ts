import type { StoreId } from "../../../stores/stores.ts";
import type { Act } from "./types.ts";

/**
 * What an act costs the hirer in time and money, and what trouble costs, in pence. Common practice, no source:
 * an hour of a holiday is taken as £12. Only their proportions matter to the plan.
 */
export const ACT_EFFORT: Readonly<Record<Act, number>> = {
  plugIn: 300,
  fillWater: 250,
  emptyWaste: 120,
  emptyCassette: 300,
  exchangeLpg: 1500,
  fillFuel: 400,
  fillDef: 500,
};
/** each night on a post costs more than one without */
export const POST_PER_NIGHT = 500;
/** a cooler night, per night */
export const COOL_NIGHT = 250;
/** full cylinders at the depot instead of the ones that are in */
export const FULL_GAS = 600;
/** another pitch than the one asked for, for each thing that it must offer */
export const OTHER_PITCH = 2500;

export const TROUBLE_COST: Readonly<Partial<Record<StoreId, number>>> = {
  battery12: 15000,
  lpg: 15000,
  freshWater: 7000,
  wasteWater: 5000,
  cassette: 9000,
  fuel: 20000,
  def: 25000,
  tractionBattery: 25000,
  starterBattery: 15000,
};
/** water dropped by the frost valve, and every share of the meals that cannot be cooked */
export const FROST_COST = 8000;
export const NO_MEALS_COST = 9000;
