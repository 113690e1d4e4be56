import { composeWalkRound, type VehicleDescription, type WalkRoundCheck } from "@setfair/engine";
import { type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "@setfair/records";
import type { DrawnMark, DrawnRound } from "./drawn-photographs.ts";

interface Walk {
  readonly hireId: string;
  readonly vehicle: VehicleDescription;
  readonly direction: "out" | "back";
  readonly signer: string;
  /** nights of the hire, for the distance on the way back */
  readonly nights: number;
  /** instant at which it begins */
  readonly at: string;
  /** checks that were too wet or dirty to judge */
  readonly wet?: readonly string[];
  /** as `marksOf` gives them */
  readonly marks: readonly DrawnMark[];
  /** photographs of the four sides and of each mark; null where none were taken */
  readonly shots: DrawnRound | null;
}
type Content = NewRecord["content"];

/** What the invented yard read at each check: plain middling values, a little less of everything on the way back. */
function contentOf(
  check: WalkRoundCheck,
  direction: "out" | "back",
  odometerKm: number,
): { kind: NewRecord["kind"]; content: Content } {
  const about = { about: check.id, checkId: check.id, direction };
  if (check.kind === "count") {
    const expected = check.expected ?? 1;
    return { kind: "count", content: { ...about, found: expected, expected } };
  }
  if (check.kind === "reading" && check.reading !== undefined) {
    const { min, max, unit, step } = check.reading;
    if (check.id === "cab.odometer")
      return { kind: "reading", content: { ...about, value: odometerKm, unit } };
    const middle = min + Math.round((max - min) / 2 / step) * step;
    return { kind: "reading", content: { ...about, value: Math.min(max, middle), unit } };
  }
  return { kind: "look", content: { ...about, saw: "same" } };
}

const KM_A_DAY = 95;
const KM_A_NIGHT = 140;
const DAY_MS = 86_400_000;

/** What the odometer shows: so much for each day since the first registration, and a little less than allowed on the hire. */
function odometerAt({ vehicle, direction, nights, at }: Walk): number {
  const start = Date.parse(at) - (direction === "back" ? nights * DAY_MS : 0);
  const days = Math.max(10, (start - Date.parse(vehicle.firstRegistered)) / DAY_MS);
  return Math.round(days * KM_A_DAY) + (direction === "back" ? nights * KM_A_NIGHT : 0);
}

interface MarkPlace {
  readonly xShare: number;
  readonly yShare: number;
}

/** A place on the body for the new mark of a hire, by the day: two marks of 54 days lie further apart than one mark may be out. */
function newPlace(at: string): MarkPlace {
  const day = Math.floor(Date.parse(at) / DAY_MS);
  return { xShare: 0.34 + (day % 9) * 0.062, yShare: 0.36 + (Math.floor(day / 9) % 6) * 0.062 };
}

/** The marks of a round: two that were there before, and back one more. */
export function marksOf(direction: "out" | "back", at: string): readonly DrawnMark[] {
  const there = [
    { xShare: 0.2, yShare: 0.55, markKind: "scratch", sizeMm: 40 },
    { xShare: 0.5, yShare: 0.55, markKind: "dent", sizeMm: 25 },
  ];
  return direction === "out" ? there : [...there, { ...newPlace(at), markKind: "scratch", sizeMm: 120 }];
}

const markContent = (
  direction: "out" | "back",
  mark: DrawnMark,
  photographs: readonly string[],
): Content => ({
  about: "body.nearside",
  direction,
  part: "body.nearside",
  view: "nearside",
  ...mark,
  note: "",
  photographs: [...photographs],
});

const stroke = [
  [
    { x: 12, y: 30 },
    { x: 40, y: 18 },
    { x: 66, y: 34 },
  ],
];

/** A whole walk-round of the demo: every check, two marks on the way out, one more on the way back, signed. */
export function walkedRecords(walk: Walk): readonly DepotRecord[] {
  const { hireId, vehicle, direction, signer, at } = walk;
  const refs = { hireId, vehicleId: vehicle.id };
  const records: DepotRecord[] = [];
  let end: ChainEnd = null;
  const add = (kind: NewRecord["kind"], content: Content): void => {
    const deviceTime = new Date(Date.parse(at) + records.length * 20_000).toISOString();
    const record = makeRecord(
      { deviceId: "demo-tablet", deviceTime, kind, refs, chain: `${hireId}.${direction}`, content },
      end,
    );
    end = { seq: record.seq, hash: record.hash };
    records.push(record);
  };
  const sign = (purpose: string) =>
    add("signature", {
      purpose,
      role: "hirer",
      signer: { name: signer },
      records: records.filter(({ kind }) => kind !== "signature").map(({ id, hash }) => ({ id, hash })),
      shown: { text: "Signed in the demonstration: nobody signed this.", language: "en-GB" },
      strokes: stroke,
    });
  add("walkStarted", { direction });
  for (const check of composeWalkRound(vehicle, direction).steps.flatMap(({ checks }) => checks)) {
    const { kind, content } = contentOf(check, direction, odometerAt(walk));
    const isWet = walk.wet?.includes(check.id) === true;
    add(kind, isWet ? { ...content, saw: "tooWetOrDirty" } : content);
  }
  for (const { view, sha256 } of walk.shots?.sides ?? [])
    add("photograph", { about: `view.${view}`, view, direction, sha256 });
  for (const [k, mark] of walk.marks.entries()) {
    const shot = walk.shots?.marks[k];
    add("mark", markContent(direction, mark, shot === undefined ? [] : [shot.sha256]));
  }
  const papers = direction === "out" ? ["agreement", "liability", "briefing"] : [];
  for (const purpose of [...papers, "condition"]) sign(purpose);
  add("walkFinished", { direction });
  return records;
}
