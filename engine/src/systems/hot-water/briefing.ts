import type { SystemBriefing } from "../contract.ts";
import type { HotWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<HotWaterSpec> = { cards: () => [] };
