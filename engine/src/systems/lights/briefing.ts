import type { SystemBriefing } from "../contract.ts";
import type { LightsSpec } from "./spec.ts";

export const briefing: SystemBriefing<LightsSpec> = { cards: () => [] };
