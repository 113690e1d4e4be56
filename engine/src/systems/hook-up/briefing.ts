import type { SystemBriefing } from "../contract.ts";
import type { HookUpSpec } from "./spec.ts";

export const briefing: SystemBriefing<HookUpSpec> = { cards: () => [] };
