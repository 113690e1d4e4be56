import type { Finding } from "../../base/finding.ts";
import { makeFinding } from "../make-finding.ts";
import type { OpenDefect } from "./types.ts";

/**
 * Open defects of a vehicle before the keys: one that touches safety stops the hire and nobody may let it
 * pass; one of comfort is told to the hirer, who signs for it, and then goes as a condition.
 */
export function checkDefects(open: readonly OpenDefect[]): readonly Finding[] {
  return open.map(({ id, class: kind, what, disclosed }) => {
    const facts = { what };
    if (kind === "safety") {
      const mends = ["defects.mend", "defects.otherVehicle"];
      return makeFinding("defects", "defects.safety", "refuse", "safety", {
        about: id,
        facts,
        sources: ["practice"],
        mends,
      });
    }
    const more = { about: id, facts, sources: ["practice"] };
    return disclosed
      ? makeFinding("defects", "defects.comfort", "condition", "policy", more)
      : makeFinding("defects", "defects.tell", "unchecked", "policy", {
          ...more,
          mends: ["defects.disclose", "defects.mend"],
        });
  });
}
