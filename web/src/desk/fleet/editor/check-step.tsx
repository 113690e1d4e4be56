import { deriveDraft } from "@setfair/engine";
import { Button } from "../../../parts/index.ts";
import { figureText, t } from "../../../parts/words.ts";
import { pathName } from "../field-words.ts";
import { type DraftProblem, leaveOut, systemsOf, unknownNames, wholeOf } from "./draft.ts";
import type { Editing } from "./editing.ts";
import { OwnFields } from "./own-field.tsx";
import { FROM } from "./vehicle-fields.ts";

export interface CheckStepProps {
  readonly editing: Editing;
  readonly onGoTo: (path: string) => void;
}

/** What is still open, each a way to its field; then the day from which it holds. */
export function CheckStep({ editing, onGoTo }: CheckStepProps) {
  const { problems } = editing;
  return (
    <>
      <section className="card stack" aria-labelledby="open-title">
        <h3 id="open-title">
          {problems.length === 0 ? t("fleet.edit.ready") : t("fleet.edit.stillOpen", { n: problems.length })}
        </h3>
        {problems.length > 0 && (
          <ul className="editor-problems">
            {problems.map((problem) => (
              <ProblemLine
                key={problem.path + problem.expected}
                problem={problem}
                editing={editing}
                onGoTo={onGoTo}
              />
            ))}
          </ul>
        )}
        <PayloadWord editing={editing} />
      </section>
      <section className="card stack">
        <h3>{t("fleet.edit.from")}</h3>
        <OwnFields fields={[FROM]} editing={editing} />
        <p className="quiet">{t("fleet.versions.intro")}</p>
      </section>
    </>
  );
}

function ProblemLine({ problem, editing, onGoTo }: CheckStepProps & { readonly problem: DraftProblem }) {
  const kindAt = (index: number) => systemsOf(editing.draft)[index]?.kind;
  return (
    <li>
      <Button look="quiet" onPress={() => onGoTo(problem.path)}>
        {pathName(problem.path, kindAt)}
      </Button>
      <span>{problem.isGap ? t("fleet.edit.needed") : problem.expected}</span>
      {unknownNames(problem).length > 0 && (
        <Button onPress={() => editing.set(leaveOut(editing.draft, problem))}>
          {t("fleet.edit.leaveOut")}
        </Button>
      )}
    </li>
  );
}

/** A payload below the rule's is allowed to be kept, with a word: the masses may be mistyped. */
function PayloadWord({ editing }: { readonly editing: Editing }) {
  const { payload, minimumPayload } = deriveDraft(wholeOf(editing.draft));
  if (payload === null || minimumPayload === null || payload.value >= minimumPayload.value) return null;
  return (
    <p className="field-error">
      {t("fleet.edit.payloadShort", { payload: figureText(payload), least: figureText(minimumPayload) })}
    </p>
  );
}
