import type { Source } from "./source.ts";

/** Sources of the trade's facts: law, codes of conduct, handbooks. One line each, added by whoever cites it. */
export const TRADE_SOURCES = {
  practice: { title: "Common practice of the trade, no source", how: "practice" },
  "from memory": { title: "From memory, unchecked", how: "from memory" },
} as const satisfies Record<string, Source>;
