import type { SystemBriefing } from "../contract.ts";
import type { TyresSpec } from "./spec.ts";

export const briefing: SystemBriefing<TyresSpec> = { cards: () => [] };
