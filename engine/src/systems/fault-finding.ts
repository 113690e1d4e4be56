/** Short ways to state causes and checks of a fault. Weights are common practice, no source. */
import type { Cause, FaultCheck } from "./contract.ts";

/** A cause with its weight before anything is known. */
export function cause(id: string, weight: number, worseWhen?: Cause["worseWhen"]): Cause {
  return worseWhen === undefined ? { id, weight } : { id, weight, worseWhen };
}

/** What a hirer may look at (`danger` 0), do and undo (1), or must leave to trained hands (2). */
export function tryThis(
  id: string,
  causes: readonly string[],
  minutes: number,
  danger: FaultCheck["danger"],
  more: { readonly after?: readonly string[]; readonly mentions?: readonly string[] } = {},
): FaultCheck {
  return { id, causes, minutes, danger, after: more.after ?? [], mentions: more.mentions ?? [] };
}
