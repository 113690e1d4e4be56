import type { SystemBriefing } from "../contract.ts";
import type { SolarSpec } from "./spec.ts";

export const briefing: SystemBriefing<SolarSpec> = { cards: () => [] };
