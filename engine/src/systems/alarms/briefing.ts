import type { SystemBriefing } from "../contract.ts";
import type { AlarmsSpec } from "./spec.ts";

export const briefing: SystemBriefing<AlarmsSpec> = { cards: () => [] };
