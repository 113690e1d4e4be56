import type { SystemBriefing } from "../contract.ts";
import type { WindowsSpec } from "./spec.ts";

export const briefing: SystemBriefing<WindowsSpec> = { cards: () => [] };
