import { type FormEvent, type ReactNode, useEffect, useRef } from "react";
import { problemAt } from "../../../api/failure.ts";
import { Button, classes } from "../../../parts/index.ts";
import { say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { EditorAside } from "./aside.tsx";
import { CheckStep } from "./check-step.tsx";
import { DetailsStep } from "./details-step.tsx";
import { STEPS, type Step, stepOf, type VehicleDraft } from "./draft.ts";
import { type Editing, editingOf } from "./editing.ts";
import { FittedStep } from "./fitted-step.tsx";
import { MassesStep } from "./masses-step.tsx";
import { VehicleStep } from "./vehicle-step.tsx";
import "./editor.css";

export interface EditorProps {
  readonly draft: VehicleDraft;
  readonly set: (draft: VehicleDraft) => void;
  readonly onSave: () => void;
  readonly isSaving: boolean;
  readonly failure: unknown;
  readonly saveLabel: string;
  /** stands where the refusal is told; absent: told plainly */
  readonly refusal?: ReactNode;
}

/** Puts the reader at a field once its step is shown, opening what it is folded into. */
function focusPath(path: string): void {
  requestAnimationFrame(() => {
    const found = [...document.querySelectorAll<HTMLElement>("[data-path]")].find(
      ({ dataset }) => dataset.path === path,
    );
    for (let up = found?.parentElement; up; up = up.parentElement)
      if (up instanceof HTMLDetailsElement) up.open = true;
    found?.scrollIntoView({ block: "center" });
    found?.querySelector<HTMLElement>("input, [role=spinbutton], button")?.focus();
  });
}

function StepBody({
  step,
  editing,
  onGoTo,
}: {
  step: Step;
  editing: Editing;
  onGoTo: (path: string) => void;
}) {
  switch (step) {
    case "vehicle":
      return <VehicleStep editing={editing} />;
    case "masses":
      return <MassesStep editing={editing} />;
    case "fitted":
      return <FittedStep editing={editing} />;
    case "details":
      return <DetailsStep editing={editing} />;
    case "check":
      return <CheckStep editing={editing} onGoTo={onGoTo} />;
  }
}

function StepList({ editing, onStep }: { readonly editing: Editing; readonly onStep: (step: Step) => void }) {
  const { draft, problems } = editing;
  return (
    <nav aria-label={t("fleet.edit.steps")}>
      <ol className="editor-steps">
        {STEPS.map((step, k) => {
          const open = problems.filter(({ path }) => stepOf(path) === step).length;
          const isHere = step === draft.step;
          return (
            <li key={step}>
              <button
                type="button"
                className={classes("editor-step", isHere && "editor-step-here")}
                aria-current={isHere ? "step" : undefined}
                onClick={() => onStep(step)}
              >
                <strong>
                  {k + 1} {say(`fleet.edit.step.${step}`)}
                </strong>
                {open > 0 && <small>{t("fleet.edit.stepOpen", { n: open })}</small>}
              </button>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}

/** The description of one vehicle, step by step; drawing and figures change beside it. */
export function Editor({ draft, set, onSave, isSaving, failure, saveLabel, refusal }: EditorProps) {
  const head = useRef<HTMLHeadingElement>(null);
  const isFirst = useRef(true);
  const refused = (path: string) => problemAt(failure, `description.${path}`);
  const editing = editingOf(draft, set, refused);
  const toStep = (step: Step) => set({ ...draft, step, isTried: draft.isTried || step === "check" });
  const goTo = (path: string) => {
    toStep(stepOf(path));
    focusPath(path);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the heading is focused when the step changes
  useEffect(() => {
    if (isFirst.current) isFirst.current = false;
    else {
      head.current?.focus({ preventScroll: true });
      window.scrollTo({ top: 0 });
    }
  }, [draft.step]);
  const at = STEPS.indexOf(draft.step);
  const next = STEPS[at + 1];
  const before = STEPS[at - 1];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (next !== undefined) toStep(next);
    else if (editing.problems.length === 0) onSave();
  };
  return (
    <form className="editor-columns" onSubmit={submit} noValidate>
      <div className="stack">
        <StepList editing={editing} onStep={toStep} />
        <h2 ref={head} tabIndex={-1} className="editor-head">
          {say(`fleet.edit.step.${draft.step}`)}
        </h2>
        <StepBody step={draft.step} editing={editing} onGoTo={goTo} />
        {refusal ?? <FailureNote failure={failure} />}
        <div className="row spread">
          {before === undefined ? (
            <span />
          ) : (
            <Button onPress={() => toStep(before)}>{t("fleet.edit.before")}</Button>
          )}
          <Button
            type="submit"
            look="main"
            isPending={isSaving}
            isDisabled={next === undefined && editing.problems.length > 0}
          >
            {next === undefined ? saveLabel : t("fleet.edit.next", { step: say(`fleet.edit.step.${next}`) })}
          </Button>
        </div>
      </div>
      <EditorAside draft={draft} />
    </form>
  );
}
