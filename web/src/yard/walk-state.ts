import type { MarkKind, View, WalkRoundCheck, WalkRoundStep } from "@setfair/engine";
import type { AnyRecord, DepotRecord } from "@setfair/records";

export type Outcome = "same" | "mark" | "tooWetOrDirty";

/** The latest answer to one check; earlier ones stay in the records. */
export interface Answer {
  readonly recordId: string;
  readonly outcome: Outcome | null;
  readonly value: number | null;
  readonly unit: string | null;
}

export interface MarkSeen {
  readonly recordId: string;
  readonly part: string;
  readonly view: string;
  readonly xShare: number;
  readonly yShare: number;
  readonly markKind: MarkKind;
  readonly sizeMm: number | null;
  readonly photographs: readonly string[];
}

/** A walk-round that was done on paper and is keyed in afterwards. */
export interface Late {
  /** on the depot's clock, to the minute */
  readonly doneAt: string;
  readonly doneBy: string;
  /** photographs of the sheets, by their hash */
  readonly sheets: readonly string[];
}

/** Where a walk-round stands, read from its records: nothing is held anywhere else. */
export interface Walk {
  readonly answers: ReadonlyMap<string, Answer>;
  /** photographs by what they are of, newest last */
  readonly photographs: ReadonlyMap<string, readonly string[]>;
  readonly marks: readonly MarkSeen[];
  readonly passed: ReadonlySet<string>;
  readonly briefed: ReadonlyMap<string, string>;
  /** ids of the defects that the hirer was told of */
  readonly told: ReadonlySet<string>;
  readonly finished: boolean;
  /** null for one that was done on a device */
  readonly late: Late | null;
  /** `<purpose>.<role>` of the signatures given */
  readonly signed: ReadonlySet<string>;
}

const textOf = (value: unknown): string | null => (typeof value === "string" ? value : null);
const numberOf = (value: unknown): number | null => (typeof value === "number" ? value : null);
const hashesOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === "string") : [];

/** Reads the records of one walk-round in their order; erased ones are passed over. */
export function readWalk(records: readonly AnyRecord[]): Walk {
  const answers = new Map<string, Answer>();
  const photographs = new Map<string, string[]>();
  const marks: MarkSeen[] = [];
  const passed = new Set<string>();
  const briefed = new Map<string, string>();
  const signed = new Set<string>();
  const told = new Set<string>();
  let finished = false;
  let late: Late | null = null;
  for (const record of records) {
    if (!("content" in record)) continue;
    const { kind, content } = record;
    const about = textOf(content.about) ?? "";
    if (kind === "photograph")
      photographs.set(about, [...(photographs.get(about) ?? []), textOf(content.sha256) ?? ""]);
    else if (kind === "mark") marks.push(markOf(record));
    else if (kind === "briefed") briefed.set(about, textOf(content.how) ?? "");
    else if (kind === "note" && about.startsWith("defect.")) told.add(about.slice("defect.".length));
    else if (kind === "walkStarted") late ??= (content.late as Late | undefined) ?? null;
    else if (kind === "walkFinished") finished = true;
    else if (kind === "signature") signed.add(`${textOf(content.purpose)}.${textOf(content.role)}`);
    else if (kind === "look" && about.startsWith("view.")) passed.add(about.slice(5));
    else if (kind === "look" || kind === "reading" || kind === "count") {
      answers.set(textOf(content.checkId) ?? about, answerOf(record));
    }
  }
  return { answers, photographs, marks, passed, briefed, told, finished, late, signed };
}

function answerOf({ id, content }: DepotRecord): Answer {
  return {
    recordId: id,
    outcome: textOf(content.outcome ?? content.saw) as Outcome | null,
    value: numberOf(content.value ?? content.found),
    unit: textOf(content.unit),
  };
}

function markOf({ id, content }: DepotRecord): MarkSeen {
  return {
    recordId: id,
    part: textOf(content.part) ?? "",
    view: textOf(content.view) ?? "",
    xShare: numberOf(content.xShare) ?? 0.5,
    yShare: numberOf(content.yShare) ?? 0.5,
    markKind: (textOf(content.markKind) ?? "scratch") as MarkKind,
    sizeMm: numberOf(content.sizeMm),
    photographs: hashesOf(content.photographs),
  };
}

/** Photographs of a check: of itself, of its part, or of the whole side where it has no part of its own. */
export function photographsOf(walk: Walk, check: WalkRoundCheck): readonly string[] {
  const also = walk.photographs.get(check.part ?? `view.${check.view}`) ?? [];
  return [...new Set([...(walk.photographs.get(check.id) ?? []), ...also])];
}

/** What a check still needs before the side can be left behind. A plain look is answered by passing the side. */
export function stillNeeds(walk: Walk, check: WalkRoundCheck): "photograph" | "reading" | "count" | null {
  if (walk.answers.get(check.id)?.outcome === "tooWetOrDirty") return null;
  // nobody can photograph yesterday's vehicle: a late entry goes without, and its marks weigh the less for it
  if (check.photograph && walk.late === null && photographsOf(walk, check).length === 0) return "photograph";
  if (check.kind !== "look" && !walk.answers.has(check.id)) return check.kind;
  return null;
}

/** The first check of a side that still needs something. */
export function nextNeeded(walk: Walk, step: WalkRoundStep): WalkRoundCheck | undefined {
  return step.checks.find((check) => stillNeeds(walk, check) !== null);
}

/** Checks of all sides that nobody answered. */
export function missingChecks(
  walk: Walk,
  steps: readonly WalkRoundStep[],
): readonly { check: WalkRoundCheck; view: View }[] {
  return steps.flatMap(({ checks, view }) =>
    checks
      .filter((check) => stillNeeds(walk, check) !== null || !walk.answers.has(check.id))
      .map((check) => ({ check, view })),
  );
}
