import type { Finding, MarkKind } from "@setfair/engine";
import type { YardJob } from "../offline/database.ts";
import { cardsToRead, cardsToShow, cardTitle } from "../parts/cards.ts";
import { dateText, findingText, t } from "../parts/words.ts";
import { checkWords, measureWords, sizeWords, viewWords } from "./names.ts";
import { openDefectsOf } from "./open-defects.ts";
import type { Purpose } from "./pages-after.ts";
import type { WalkActs } from "./use-walk.ts";
import { missingChecks } from "./walk-state.ts";

/** The text that is signed, as shown: plain lines, so that it can be shown again. */
export function shownText(job: YardJob, acts: WalkActs, purpose: Purpose): string {
  const head = t("yard.text.head", {
    name: job.vehicle.name,
    registration: job.vehicle.registration,
    reference: job.reference,
    customer: job.customer,
  });
  const lines =
    purpose === "condition"
      ? conditionLines(job, acts)
      : purpose === "briefing"
        ? briefingLines(job, acts)
        : agreementLines(job);
  return [head, ...lines].join("\n");
}

function conditionLines(job: YardJob, { walk, round }: WalkActs): readonly string[] {
  const all = round.steps.flatMap(({ checks }) => checks);
  const marks = walk.marks.map((mark) =>
    t("yard.text.mark", {
      kind: t(`yard.markKind.${mark.markKind}`),
      size: sizeWords(mark.sizeMm) || "none",
      view: viewWords(mark.view),
    }),
  );
  const known = job.knownMarks.map((mark) =>
    t("yard.text.knownMark", {
      kind: t(`yard.markKind.${mark.markKind as MarkKind}`),
      view: viewWords(mark.view),
    }),
  );
  const readings = all.flatMap((check) => {
    const answer = walk.answers.get(check.id);
    return answer === undefined || answer.value === null
      ? []
      : [t("yard.text.reading", { what: checkWords(check), value: measureWords(answer.value, answer.unit) })];
  });
  const wet = all
    .filter(({ id }) => walk.answers.get(id)?.outcome === "tooWetOrDirty")
    .map((check) => t("yard.text.wet", { what: checkWords(check) }));
  // a job that this device fetched before the windows were part of it says none
  const { additionsHours = 0, secondLookHours = 0 } = job.windows ?? {};
  const window =
    job.walk === "out"
      ? additionsHours > 0
        ? [t("settling.window.additions", { hours: additionsHours })]
        : []
      : wet.length > 0 && secondLookHours > 0 && job.secondLook == null
        ? [t("settling.window.secondLook", { hours: secondLookHours })]
        : [];
  const missing = missingChecks(walk, round.steps).map(({ check }) =>
    t("yard.text.missing", { what: checkWords(check) }),
  );
  return [
    t(job.walk === "out" ? "yard.text.out" : "yard.text.back"),
    ...(known.length === 0 ? [] : [t("yard.text.known", { n: known.length }), ...known]),
    marks.length === 0 ? t("yard.text.noMarks") : t("yard.text.marks", { n: marks.length }),
    ...marks,
    ...readings,
    ...wet,
    ...window,
    ...missing,
    ...defectLines(job),
    t("yard.text.whoPays"),
  ];
}

function defectLines(job: YardJob): readonly string[] {
  const defects = openDefectsOf(job);
  if (defects.length === 0) return [];
  return [
    t("evidence.tell.inText", { n: defects.length }),
    ...defects.map(({ what, where }) => `– ${t("evidence.tell.line", { what, where })}`),
  ];
}

function briefingLines(job: YardJob, { walk }: WalkActs): readonly string[] {
  return [
    t("yard.text.briefing"),
    ...cardsToShow(job.briefing).map((card) => {
      const how = walk.briefed.get(card.id);
      return t("yard.text.card", {
        title: cardTitle(card),
        how: t(`yard.briefed.${(how ?? "notYet") as "shown"}`),
      });
    }),
    ...(cardsToRead(job.briefing).length === 0
      ? []
      : [t("yard.text.toRead"), ...cardsToRead(job.briefing).map((card) => `– ${cardTitle(card)}`)]),
  ];
}

function agreementLines(job: YardJob): readonly string[] {
  const conditions = (job.conditions as readonly Finding[]).map(
    (finding, index) => `${index + 1}. ${findingText(finding)}`,
  );
  return [
    t("yard.text.agreement", { due: dateText(job.due, "dayTime") }),
    ...(conditions.length === 0 ? [] : [t("yard.text.conditions", { n: conditions.length }), ...conditions]),
    t("yard.text.liability"),
  ];
}
