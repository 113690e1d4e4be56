import { composeRuleBook, RULES, type Rule, type RuleBook, type RuleChange } from "@setfair/engine";
import { hashJson } from "@setfair/records";
import type { RuleChangeRow, Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";

const shippedHash = hashJson(RULES);

/** A row of the store as the engine takes it. */
export function changeOf({ ruleId, kind, document }: RuleChangeRow): RuleChange {
  if (kind === "correct") return { kind, rule: asDocument<{ rule: Rule }>(document).rule };
  if (kind === "confirm")
    return { kind, ruleId, ...asDocument<{ readOn: string; source: string }>(document) };
  return { kind, ruleId, ...asDocument<{ validFrom: string }>(document) };
}

/** The depot's rule book; its id is the hash of the rules that ship and of all that the depot changed. */
export function bookOf(rows: readonly RuleChangeRow[]): RuleBook {
  const changes = rows.map(changeOf);
  return composeRuleBook(hashJson({ shipped: shippedHash, changes }), changes);
}

export async function readRuleBook(store: Store): Promise<RuleBook> {
  return bookOf(await store.rules.all());
}
