import type { SystemBriefing } from "../contract.ts";
import type { HeatingSpec } from "./spec.ts";

export const briefing: SystemBriefing<HeatingSpec> = { cards: () => [] };
