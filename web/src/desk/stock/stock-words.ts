import { has, say } from "../../parts/words.ts";

/** The name of a kind of thing; a kind of the depot's own has none but its own. */
export function stockKindText(kind: string): string {
  if (has(`stockKind.${kind}`)) return say(`stockKind.${kind}`);
  return has(`quoteAbout.${kind}`) ? say(`quoteAbout.${kind}`) : kind;
}
