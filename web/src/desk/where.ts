import type { Schemas } from "../api/client.ts";

export type Gate = Schemas["Finding"]["gate"];
type Part = "now" | "people" | "trip" | "load" | "briefing" | "money" | "handover" | "back";

const PART_OF: Readonly<Record<Gate, Part>> = {
  seats: "people",
  licence: "people",
  insurance: "people",
  masses: "load",
  diary: "now",
  dueDates: "now",
  defects: "now",
  countries: "trip",
  crossing: "trip",
  season: "trip",
  resources: "trip",
  money: "money",
  signatures: "handover",
};

/** Where on the hire's page a gate is put right. */
export function placeOfGate(hireId: string, gate: Gate): string {
  return `/hires/${encodeURIComponent(hireId)}/${PART_OF[gate]}`;
}

export const placeOfHire = (hireId: string): string => `/hires/${encodeURIComponent(hireId)}`;

/** Papers and vehicle are got ready side by side and meet at the keys. */
export const PAPER_GATES: readonly Gate[] = [
  "licence",
  "insurance",
  "countries",
  "crossing",
  "money",
  "signatures",
];
export const VEHICLE_GATES: readonly Gate[] = [
  "seats",
  "masses",
  "diary",
  "dueDates",
  "defects",
  "season",
  "resources",
];
