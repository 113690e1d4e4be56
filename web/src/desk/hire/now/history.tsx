import type { Schemas } from "../../../api/client.ts";
import { dateText, has, say, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";

type Entry = NonNullable<Schemas["HirePage"]["history"]>[number];

/** Facts that a text can show: what is not a word or a number is left out. */
const plainFacts = (facts: Entry["facts"]): Record<string, string | number> =>
  Object.fromEntries(
    Object.entries(facts).filter(
      (entry): entry is [string, string | number] =>
        typeof entry[1] === "string" || typeof entry[1] === "number",
    ),
  );

/** What happened, in words; an entry must never take the page down, so a text that lacks a fact shows its name. */
function whatText({ what, facts }: Entry): string {
  const id = `history.${what}`;
  if (!has(id)) return what;
  try {
    return say(id, plainFacts(facts));
  } catch {
    return what;
  }
}

/** Who did what, newest first. */
export function History({ history }: { readonly history: readonly Entry[] }) {
  const { depot } = useSignedIn();
  if (history.length === 0) return null;
  return (
    <details className="card">
      <summary className="fold">{t("hire.history", { n: history.length })}</summary>
      <ul>
        {history.map((entry) => (
          <li key={entry.at + entry.what} className="gate-rest">
            <span>{whatText(entry)}</span>
            <span className="quiet">{`${entry.by} · ${dateText(entry.at, "dayTime", depot.timeZone)}`}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
