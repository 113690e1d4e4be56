import type { SystemBriefing } from "../contract.ts";
import type { LeisureBatterySpec } from "./spec.ts";

export const briefing: SystemBriefing<LeisureBatterySpec> = { cards: () => [] };
