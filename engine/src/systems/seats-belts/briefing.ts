import type { SystemBriefing } from "../contract.ts";
import type { SeatsBeltsSpec } from "./spec.ts";

export const briefing: SystemBriefing<SeatsBeltsSpec> = { cards: () => [] };
