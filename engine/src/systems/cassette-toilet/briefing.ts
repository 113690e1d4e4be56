import type { SystemBriefing } from "../contract.ts";
import type { CassetteToiletSpec } from "./spec.ts";

export const briefing: SystemBriefing<CassetteToiletSpec> = { cards: () => [] };
