import { describeSource, isSource } from "../sources/register.ts";
import { rulesInForce } from "./rule-book.ts";

/**
 * One line for a person on what a finding or figure rests on: a published source, or a dated rule with its
 * source, the day it was read and how surely it is known. What is neither (an insurer's criteria, the depot's
 * terms) stands as its own id. Law shown this way is to be checked locally.
 */
export function citeSource(id: string): string {
  if (isSource(id)) return describeSource(id);
  // of several dated versions the one that begins last: what a person would look up today
  const rule = rulesInForce()
    .rules.filter((each) => each.id === id)
    .sort((a, b) => (a.validFrom < b.validFrom ? 1 : -1))[0];
  if (rule === undefined) return id;
  const known = { read: "read", secondary: "an account of it, read", memory: "from memory, noted" }[
    rule.confidence
  ];
  // some name their doubt in the source too: said once is enough
  const source = rule.confidence === "memory" ? rule.source.replace(/ \(from memory\)$/, "") : rule.source;
  return `${source} (${known} ${rule.readOn})`;
}
