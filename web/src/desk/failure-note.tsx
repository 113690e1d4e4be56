import { Failure } from "../api/failure.ts";
import { FindingsList, Problem } from "../parts/index.ts";
import { has, say, t } from "../parts/words.ts";

export interface FailureNoteProps {
  readonly failure: unknown;
  /** paths of fields that show their own problem */
  readonly shown?: readonly string[];
  readonly onAgain?: () => void;
}

const titleOf = (failure: unknown): string => {
  const id = failure instanceof Failure ? `error.${failure.code}` : "error.broken";
  return has(id)
    ? say(id)
    : t("desk.failure.other", { code: failure instanceof Failure ? failure.code : "?" });
};

/** Gates are named by their words, other fields by their path. */
function problemText(path: string, expected: string): string {
  const gate = path.startsWith("glass.") ? `gate.${path.slice("glass.".length)}` : "";
  if (has(gate))
    return `${say(gate)}: ${has(`gateState.${expected}`) ? say(`gateState.${expected}`) : expected}`;
  return path === "" ? expected : `${path}: ${expected}`;
}

/** To ask again helps with whatever passes; what a role may not do it may not do the second time either. */
const mayHelp = (failure: unknown): boolean => !(failure instanceof Failure && failure.status === 403);

/** Only what stops it: conditions and notes stand elsewhere. */
const stops = ({ severity }: { readonly severity: string }): boolean =>
  severity !== "condition" && severity !== "note";

/** What the server said no to: the reason, fields that no field above shows, and the findings behind it. */
export function FailureNote({ failure, shown = [], onAgain }: FailureNoteProps) {
  if (failure === null || failure === undefined) return null;
  const problems =
    failure instanceof Failure ? failure.problems.filter(({ path }) => !shown.includes(path)) : [];
  const findings = failure instanceof Failure ? failure.findings.filter(stops) : [];
  return (
    <Problem title={titleOf(failure)} onAgain={mayHelp(failure) ? onAgain : undefined}>
      {problems.length > 0 && (
        <ul>
          {problems.map(({ path, expected }) => (
            <li key={path + expected}>{problemText(path, expected)}</li>
          ))}
        </ul>
      )}
      {findings.length > 0 && <FindingsList findings={findings} />}
    </Problem>
  );
}
