import type { SystemBriefing } from "../contract.ts";
import type { FuelSpec } from "./spec.ts";

export const briefing: SystemBriefing<FuelSpec> = { cards: () => [] };
