import { SYSTEM_KINDS } from "../systems/registry.ts";

/** The trade's order of going through a vehicle. Kinds that are named here and not registered are passed over. */
const ORDER = [
  ["onTheRoad", ["keys", "cab", "seatsBelts", "tyres", "fuel", "def", "tractionBattery"]],
  ["power", ["controlPanel", "leisureBattery", "charging", "solar", "inverter", "hookUp", "lights"]],
  ["gas", ["lpg"]],
  ["warmth", ["heating", "hotWater", "airConditioning", "heatedScreen"]],
  ["kitchen", ["fridge", "cooking"]],
  ["water", ["freshWater", "wasteWater", "cassetteToilet"]],
  ["living", ["beds", "ladder", "elevatingRoof", "windows", "step", "door", "doors", "television"]],
  ["outside", ["awning", "bikeRack", "garage", "roofBox", "levelling"]],
  ["alarm", ["alarms"]],
] as const satisfies readonly (readonly [string, readonly string[]])[];

export interface SystemGroup {
  /** text under `group.<id>` */
  readonly id: (typeof ORDER)[number][0] | "other";
  readonly kinds: readonly string[];
}

/** Every registered kind once, grouped in the order in which the trade goes through a vehicle; what no group names comes last. */
export function systemGroups(): readonly SystemGroup[] {
  const registered: readonly string[] = SYSTEM_KINDS;
  const named: readonly string[] = ORDER.flatMap(([, kinds]) => kinds);
  const groups: SystemGroup[] = ORDER.map(([id, kinds]) => ({
    id,
    kinds: kinds.filter((kind) => registered.includes(kind)),
  }));
  const others = registered.filter((kind) => !named.includes(kind));
  return [...groups, { id: "other" as const, kinds: others }].filter(({ kinds }) => kinds.length > 0);
}
