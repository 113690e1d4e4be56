import type { SystemBriefing } from "../contract.ts";
import type { CabSpec } from "./spec.ts";

export const briefing: SystemBriefing<CabSpec> = { cards: () => [] };
