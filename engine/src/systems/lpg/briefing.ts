import type { SystemBriefing } from "../contract.ts";
import type { LpgSpec } from "./spec.ts";

export const briefing: SystemBriefing<LpgSpec> = { cards: () => [] };
