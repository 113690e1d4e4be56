import type { SystemBriefing } from "../contract.ts";
import type { WasteWaterSpec } from "./spec.ts";

export const briefing: SystemBriefing<WasteWaterSpec> = { cards: () => [] };
