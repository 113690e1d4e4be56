import type { SystemBriefing } from "../contract.ts";
import type { KeysSpec } from "./spec.ts";

export const briefing: SystemBriefing<KeysSpec> = { cards: () => [] };
