import { partsOf } from "@setfair/drawing";
import type { VehicleDescription, WalkRoundCheck, WalkRoundStep } from "@setfair/engine";
import { useEffect, useRef } from "react";
import type { YardJob } from "../offline/database.ts";
import { classes } from "../parts/classes.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { aimAt } from "./aim-at.ts";
import { CheckCard, KeepMeasure } from "./check-card.tsx";
import { DrawingPane } from "./drawing-pane.tsx";
import { lookContent } from "./look-content.ts";
import { KeepMark, MarkCard } from "./mark-card.tsx";
import { checkWords, measureWords, partWords, viewWords } from "./names.ts";
import { PartCard } from "./part-card.tsx";
import { PhotoButton } from "./photo-button.tsx";
import { Press } from "./press.tsx";
import type { Place, WalkActs } from "./use-walk.ts";
import { nextNeeded, photographsOf, stillNeeds } from "./walk-state.ts";

export interface SideProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
  readonly step: WalkRoundStep;
  readonly index: number;
}

/** One side of the vehicle: touch a part, answer it, or pass the whole side. The next step is always at the foot. */
export function SidePage({ job, acts, step, index }: SideProps) {
  const { place, walk, round, goTo } = acts;
  const check = step.checks.find(({ id }) => id === place.open?.check) ?? null;
  const part = place.open?.part ?? check?.part ?? null;
  const open = (next: WalkRoundCheck) =>
    goTo({ ...place, open: { check: next.id, part: next.part ?? null }, mark: null, typed: "" });
  const close = () => goTo({ ...place, open: null, mark: null, typed: "" });
  // answered: on to the next thing that this side still needs, else back to its list
  const answered = () => {
    const next = step.checks.find((one) => one.id !== check?.id && stillNeeds(walk, one) !== null);
    return next === undefined ? close() : open(next);
  };
  const touch = (touched: string) => {
    const found = step.checks.filter(({ part: its }) => its === touched);
    const next = found.find((one) => stillNeeds(walk, one) !== null) ?? found[0];
    return goTo({ ...place, open: { check: next?.id ?? null, part: touched }, mark: null, typed: "" });
  };
  // what is opened comes into sight with the drawing above it
  const opened = `${place.open?.check} ${place.open?.part} ${place.mark !== null}`;
  const drawing = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page moves when another thing is opened, and only then
  useEffect(() => {
    // newer browsers answer with a promise, which is no clean-up
    void drawing.current?.scrollIntoView({ block: "start" });
  }, [opened, step.view]);
  const about = check?.id ?? part ?? `view.${step.view}`;
  const fine = async (bytes: Uint8Array<ArrayBuffer>, of: WalkRoundCheck) => {
    const sha256 = await acts.photograph(bytes, about, step.view, of);
    await acts.keep("look", lookContent(of, "same", [...photographsOf(walk, of), sha256]));
    await answered();
  };
  return (
    <>
      <ScrollMain className="yard-main stack side">
        <div className="side-head">
          <h1>{viewWords(step.view)}</h1>
          <p>{t("yard.side.place", { n: index + 1, of: round.steps.length })}</p>
        </div>
        <div ref={drawing} className={check !== null && place.mark === null ? "drawing-small" : undefined}>
          <DrawingPane job={job} acts={acts} view={step.view} chosen={part} onTouch={touch} />
        </div>
        {place.mark !== null ? (
          <MarkCard acts={acts} step={step} check={check} part={part ?? `view.${step.view}`} />
        ) : check !== null ? (
          <CheckCard key={check.id} job={job} acts={acts} check={check} onClose={close} onDone={answered} />
        ) : part !== null ? (
          <PartCard job={job} acts={acts} part={part} name={nameOf(job, step, part)} onClose={close} />
        ) : (
          <CheckRows step={step} index={index} acts={acts} onOpen={open} />
        )}
      </ScrollMain>
      <footer className="yard-foot">
        <PhotoButton
          label={t("yard.photo.take")}
          fromBefore={walk.late !== null}
          main={wantsPhotograph(acts, step, check)}
          aim={aimAt(
            job.vehicle.description as VehicleDescription,
            step.view,
            check !== null || part !== null || place.mark !== null,
          )}
          fine={
            check?.kind === "look" && place.mark === null
              ? {
                  words: t(job.walk === "out" ? "yard.aim.fine" : "yard.aim.same"),
                  onShot: (bytes) => fine(bytes, check),
                }
              : undefined
          }
          onPhoto={(bytes) => acts.photograph(bytes, about, step.view, check)}
        />
        {place.mark !== null ? (
          <KeepMark acts={acts} step={step} check={check} part={part ?? `view.${step.view}`} />
        ) : check !== null && check.kind !== "look" && !walk.answers.has(check.id) ? (
          <KeepMeasure acts={acts} check={check} onDone={answered} />
        ) : (
          <NextButton step={step} index={index} acts={acts} onOpen={open} />
        )}
      </footer>
    </>
  );
}

/** A photograph is the next thing to do: of the check that is open, or of the whole side while nothing is. */
function wantsPhotograph(
  { place, walk }: WalkActs,
  step: WalkRoundStep,
  check: WalkRoundCheck | null,
): boolean {
  if (place.mark !== null) return false;
  if (check !== null) return stillNeeds(walk, check) === "photograph";
  return place.open === null && WHOLE_SIDES.includes(step.view) && !walk.photographs.has(`view.${step.view}`);
}
const WHOLE_SIDES: readonly string[] = ["front", "nearside", "rear", "offside"];

function nameOf(job: YardJob, step: WalkRoundStep, part: string): string {
  const vehicle = job.vehicle.description as VehicleDescription;
  return partWords(partsOf(vehicle, step.view).find((one) => one.part === part)?.name ?? `part.${part}`);
}

function CheckRows({ step, index, acts, onOpen }: NextProps) {
  const { walk, round, goTo } = acts;
  const next = round.steps[index + 1];
  if (step.checks.length === 0) return <p className="card">{t("yard.side.noChecks")}</p>;
  return (
    <>
      <ul className="card check-rows">
        {step.checks.map((check) => {
          const needs = stillNeeds(walk, check);
          const answer = walk.answers.get(check.id);
          return (
            <li key={check.id}>
              <Press look="row" onPress={() => onOpen(check)}>
                <span className="yard-row-what">{checkWords(check)}</span>
                <span className={classes("yard-row-state", needs !== null && "needs")}>
                  {needs !== null
                    ? t(`yard.needs.${needs}`)
                    : answer === undefined
                      ? t("yard.needs.look")
                      : answer.value !== null
                        ? measureWords(answer.value, answer.unit)
                        : t(`yard.saw.${answer.outcome ?? "same"}`)}
                </span>
              </Press>
            </li>
          );
        })}
      </ul>
      {nextNeeded(walk, step) !== undefined && (
        <Press look="quiet" onPress={() => goTo(afterSide(round.steps, index))}>
          {next === undefined
            ? t("yard.next.laterEnd")
            : t("yard.next.later", { view: viewWords(next.view) })}
        </Press>
      )}
    </>
  );
}

interface NextProps {
  readonly step: WalkRoundStep;
  readonly index: number;
  readonly acts: WalkActs;
  readonly onOpen: (check: WalkRoundCheck) => unknown;
}

/** Always in the same place: the next thing this side still needs, then the next side, then the summary. */
function NextButton({ step, index, acts, onOpen }: NextProps) {
  const { walk, round, place, keep, goTo } = acts;
  const needed = nextNeeded(walk, step);
  const next = round.steps[index + 1];
  if (needed !== undefined) {
    return (
      <Press look="main" onPress={() => onOpen(needed)} disabled={needed.id === place.open?.check}>
        {needed.id === place.open?.check
          ? t("yard.photo.first")
          : t("yard.next.check", { what: checkWords(needed) })}
      </Press>
    );
  }
  const after = afterSide(round.steps, index);
  const pass = async () => {
    for (const check of step.checks) {
      if (check.kind !== "look" || walk.answers.has(check.id)) continue;
      await keep("look", lookContent(check, "same", photographsOf(walk, check)));
    }
    if (!walk.passed.has(step.view))
      await keep("look", { about: `view.${step.view}`, saw: "looked", view: step.view });
    await goTo(after);
  };
  return (
    <Press look="main" onPress={pass} disabled={place.mark !== null}>
      {next === undefined ? t("yard.next.end") : t("yard.next.side", { view: viewWords(next.view) })}
    </Press>
  );
}

/** Where the person goes from a side: the next one, or the summary after the last. */
const afterSide = (steps: readonly WalkRoundStep[], index: number): Place => ({
  page: steps[index + 1] === undefined ? "summary" : index + 1,
  open: null,
  mark: null,
  typed: "",
});
