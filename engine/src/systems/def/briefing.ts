import type { SystemBriefing } from "../contract.ts";
import type { DefSpec } from "./spec.ts";

export const briefing: SystemBriefing<DefSpec> = { cards: () => [] };
