import type { SystemBriefing } from "../contract.ts";
import type { FridgeSpec } from "./spec.ts";

export const briefing: SystemBriefing<FridgeSpec> = { cards: () => [] };
