import type { SystemBriefing } from "../contract.ts";
import type { ChargingSpec } from "./spec.ts";

export const briefing: SystemBriefing<ChargingSpec> = { cards: () => [] };
