import type { Schemas } from "../../../api/client.ts";
import { dateText, has, say, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";

type Entry = Schemas["HirePage"]["history"][number];

const whatText = (what: string): string => (has(`history.${what}`) ? say(`history.${what}`) : what);

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
            <span>{whatText(entry.what)}</span>
            <span className="quiet">{`${entry.by} · ${dateText(entry.at, "dayTime", depot.timeZone)}`}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}
