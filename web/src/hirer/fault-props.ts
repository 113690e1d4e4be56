import type { SymptomOnVehicle } from "@setfair/engine/diagnosis";
import type { Guide } from "../offline/database.ts";
import type { HirerGuide } from "./use-guide.ts";

export interface FaultProps {
  readonly hirer: HirerGuide;
  readonly guide: Guide;
  readonly on: SymptomOnVehicle;
}
