import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { makeFinding } from "../make-finding.ts";
import { isMark, matchMarks } from "./match-marks.ts";
import type {
  CompareCondition,
  ConditionRecord,
  ConditionResult,
  Difference,
  WalkRoundCheck,
} from "./types.ts";

type Content<Kind> = Extract<ConditionRecord["content"], { kind: Kind }>;
type Records = readonly ConditionRecord[];

interface Rounds {
  readonly out: Records;
  readonly back: Records;
  readonly checks: readonly WalkRoundCheck[];
}

/**
 * What came back otherwise than it went: readings beyond their measuring tolerance, counts that are short,
 * marks that the out round does not have. Two differing readings of one thing in one round are a question and
 * are not compared; too wet or dirty asks for a second look.
 */
export const compareCondition: CompareCondition = (out, back, walkRound) => {
  const rounds: Rounds = { out, back, checks: walkRound.steps.flatMap(({ checks }) => checks) };
  const questions = [...questionsOf(out, rounds, "out"), ...questionsOf(back, rounds, "back")];
  const asked = new Set(questions.map(({ checkId }) => checkId));
  const clear = rounds.checks.filter(({ id }) => !asked.has(id));
  const marks = matchMarks(out.filter(isMark), back.filter(isMark));
  const secondLooks = [...secondLooksOf(out, "out"), ...secondLooksOf(back, "back")];
  const result: ConditionResult = {
    differences: [
      ...clear.flatMap((check) => readingDifference(check, rounds)),
      ...clear.flatMap((check) => countDifference(check, rounds)),
      ...markDifferences(rounds, marks),
      ...rounds.checks.flatMap((check) => lookDifference(check, rounds)),
    ],
    existing: [...marks].map(([later, earlier]) => ({ back: later.recordId, out: earlier.recordId })),
    questions,
    secondLooks,
    missing: rounds.checks
      .filter(({ id }) => back.every((record) => checkOf(record) !== id))
      .map(({ id }) => id),
  };
  return { result, findings: findingsOf(result) };
};

const checkOf = ({ content }: ConditionRecord) => content.checkId;

function entriesOf<Kind extends "reading" | "count">(
  records: Records,
  kind: Kind,
  checkId: string,
): { recordId: string; content: Content<Kind> }[] {
  return records.flatMap(({ recordId, content }) =>
    content.kind === kind && content.checkId === checkId
      ? [{ recordId, content: content as Content<Kind> }]
      : [],
  );
}

function questionsOf(
  records: Records,
  { checks }: Rounds,
  when: "out" | "back",
): ConditionResult["questions"][number][] {
  return checks.flatMap((check) => {
    const readings = entriesOf(records, "reading", check.id);
    const counts = entriesOf(records, "count", check.id);
    const values = readings.map(({ content }) => content.value);
    const differs =
      Math.max(...values) - Math.min(...values) > (check.reading?.tolerance ?? 0) ||
      readings.some(({ content }) => content.unit !== check.reading?.unit);
    const miscounted = new Set(counts.map(({ content }) => content.counted)).size > 1;
    const entries = readings.length > 0 && differs ? readings : miscounted ? counts : [];
    return entries.length === 0
      ? []
      : [{ checkId: check.id, when, records: entries.map(({ recordId }) => recordId) }];
  });
}

function evidence(check: WalkRoundCheck | undefined, checkId: string | null, out: Records, back: Records) {
  return {
    checkId,
    systemKind: check?.systemKind ?? null,
    charge: check?.charge ?? null,
    outRecords: out.map(({ recordId }) => recordId),
    backRecords: back.map(({ recordId }) => recordId),
    photographs: [...out, ...back].flatMap(({ content }) => content.photographs ?? []),
  };
}

function readingDifference(check: WalkRoundCheck, { out, back }: Rounds): Difference[] {
  const [before, after] = [entriesOf(out, "reading", check.id), entriesOf(back, "reading", check.id)];
  const [first, last] = [before.at(-1)?.content, after.at(-1)?.content];
  if (first === undefined || last === undefined || check.reading === undefined) return [];
  const { unit, tolerance, source } = check.reading;
  const change = last.value - first.value;
  if (Math.abs(change) <= tolerance + 1e-9) return [];
  const read = (value: number) => figure(value, unit, "-", { check: check.id }, "measured");
  return [
    {
      kind: "reading",
      id: `reading:${check.id}`,
      ...evidence(check, check.id, before, after),
      out: read(first.value),
      back: read(last.value),
      change: figure(change, unit, "-", { out: first.value, back: last.value }, "measured"),
      tolerance: figure(tolerance, unit, "-", {}, "declared", source),
    },
  ];
}

function countDifference(check: WalkRoundCheck, { out, back }: Rounds): Difference[] {
  const [before, after] = [entriesOf(out, "count", check.id), entriesOf(back, "count", check.id)];
  const counted = after.at(-1)?.content.counted;
  const went = before.at(-1)?.content.counted;
  if (counted === undefined || went === undefined || counted >= went) return [];
  return [
    {
      kind: "count",
      id: `count:${check.id}`,
      ...evidence(check, check.id, before, after),
      expected: went,
      counted,
      short: went - counted,
    },
  ];
}

function markDifferences({ back, checks }: Rounds, existing: ReturnType<typeof matchMarks>): Difference[] {
  return back
    .filter(isMark)
    .filter((mark) => !existing.has(mark))
    .map((mark) => {
      const { checkId, part, view, markKind, sizeMm, xShare, yShare } = mark.content;
      const check = checks.find(({ id }) => id === checkId) ?? checks.find((each) => each.part === part);
      return {
        kind: "mark",
        id: `mark:${mark.recordId}`,
        ...evidence(check, checkId ?? null, [], [mark]),
        part,
        view,
        markKind,
        sizeMm: sizeMm ?? null,
        xShare,
        yShare,
      };
    });
}

/** Not as it went, and nobody drew a mark for it in either round. */
function lookDifference(check: WalkRoundCheck, { out, back }: Rounds): Difference[] {
  const looks = (records: Records) =>
    records.filter(({ content }) => content.kind === "look" && content.checkId === check.id);
  const isOff = (records: Records) =>
    looks(records).some(({ content }) => content.kind === "look" && content.outcome === "mark");
  const isDrawn = [...out, ...back].filter(isMark).some(({ content }) => content.checkId === check.id);
  if (isDrawn || !isOff(back) || isOff(out)) return [];
  return [
    {
      kind: "look",
      id: `look:${check.id}`,
      ...evidence(check, check.id, looks(out), looks(back)),
      view: check.view,
    },
  ];
}

/** A look that could not be made, unless the same check was looked at after all in the same round. */
function secondLooksOf(records: Records, when: "out" | "back"): ConditionResult["secondLooks"][number][] {
  const looks = records.flatMap(({ content }) => (content.kind === "look" ? [content] : []));
  const seen = new Set(
    looks.filter(({ outcome }) => outcome !== "tooWetOrDirty").map(({ checkId }) => checkId),
  );
  const unseen = new Set(looks.map(({ checkId }) => checkId).filter((checkId) => !seen.has(checkId)));
  return [...unseen].map((checkId) => ({ checkId, when }));
}

function findingsOf({ questions, secondLooks, missing }: ConditionResult): Finding[] {
  return [
    ...questions.map(({ checkId, when }) =>
      makeFinding("defects", "condition.twoReadings", "unchecked", "policy", {
        about: checkId,
        facts: { when },
        mends: ["condition.decide"],
      }),
    ),
    ...secondLooks.map(({ checkId, when }) =>
      makeFinding("defects", "condition.secondLook", "condition", "policy", {
        about: checkId,
        facts: { when },
        mends: ["condition.lookAgain"],
      }),
    ),
    ...(missing.length === 0
      ? []
      : [
          makeFinding("defects", "condition.missing", "unchecked", "policy", {
            facts: { count: missing.length },
            mends: ["condition.finishRound"],
          }),
        ]),
  ];
}
