/**
 * The stores in which systems meet. A level is bare in typed arrays, in the unit given here; systems never
 * import each other, they only need from and give to stores.
 *
 * kind `level`: carried from step to step, never below 0 nor above capacity.
 * kind `supply`: what may be drawn in this step only (a post, a running engine); what is left over is gone.
 */
export const STORES = {
  battery12: { unit: "Wh", kind: "level", trouble: "empty" },
  mains230: { unit: "Wh", kind: "supply", trouble: "none" },
  /** what an inverter can give in the step to the sockets and the hob behind it */
  inverter230: { unit: "Wh", kind: "supply", trouble: "none" },
  /** 12 V current from the running engine: alternator energy available in the step */
  engine12: { unit: "Wh", kind: "supply", trouble: "none" },
  lpg: { unit: "kg", kind: "level", trouble: "empty" },
  freshWater: { unit: "L", kind: "level", trouble: "empty" },
  wasteWater: { unit: "L", kind: "level", trouble: "full" },
  cassette: { unit: "L", kind: "level", trouble: "full" },
  fuel: { unit: "L", kind: "level", trouble: "empty" },
  def: { unit: "L", kind: "level", trouble: "empty" },
  /** sensible heat of the cabin above −40 °C */
  cabinHeat: { unit: "Wh", kind: "level", trouble: "none" },
  /** heat in the water heater above 0 °C */
  hotWaterHeat: { unit: "Wh", kind: "level", trouble: "none" },
  /** water in the heater itself: gone when its frost valve has opened */
  heaterWater: { unit: "L", kind: "level", trouble: "none" },
  starterBattery: { unit: "Wh", kind: "level", trouble: "empty" },
  tractionBattery: { unit: "Wh", kind: "level", trouble: "empty" },
} as const satisfies Record<string, StoreDefinition>;

export interface StoreDefinition {
  readonly unit: "Wh" | "kg" | "L";
  readonly kind: "level" | "supply";
  /** which end is trouble for the hirer */
  readonly trouble: "empty" | "full" | "none";
}

export type StoreId = keyof typeof STORES;
export const STORE_IDS = Object.keys(STORES) as StoreId[];
