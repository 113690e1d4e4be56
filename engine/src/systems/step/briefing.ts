import type { SystemBriefing } from "../contract.ts";
import type { StepSpec } from "./spec.ts";

export const briefing: SystemBriefing<StepSpec> = { cards: () => [] };
