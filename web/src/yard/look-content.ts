import type { WalkRoundCheck } from "@setfair/engine";
import type { Outcome } from "./walk-state.ts";

/** What a look record says, in the words of the envelope and of the condition room. */
export function lookContent(check: WalkRoundCheck, outcome: Outcome, photographs: readonly string[]) {
  return {
    about: check.id,
    checkId: check.id,
    saw: outcome,
    outcome,
    view: check.view,
    photographs: [...photographs],
  };
}
