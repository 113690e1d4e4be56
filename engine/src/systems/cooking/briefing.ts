import type { SystemBriefing } from "../contract.ts";
import type { CookingSpec } from "./spec.ts";

export const briefing: SystemBriefing<CookingSpec> = { cards: () => [] };
