import type { SystemBriefing } from "../contract.ts";
import type { FreshWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<FreshWaterSpec> = { cards: () => [] };
