import type { SystemBriefing } from "../contract.ts";
import type { AwningSpec } from "./spec.ts";

export const briefing: SystemBriefing<AwningSpec> = { cards: () => [] };
