import { composeWalkRound, type VehicleDescription, type WalkRoundCheck } from "@setfair/engine";
import { type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "@setfair/records";

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

/** A place for the new mark of a hire, by the day: two marks of 52 days lie further apart than one mark may be out. */
function newPlace(at: string): MarkPlace {
  const day = Math.floor(Date.parse(at) / DAY_MS);
  return { xShare: 0.08 + (day % 13) * 0.065, yShare: 0.15 + (Math.floor(day / 13) % 4) * 0.08 };
}

const mark = (direction: "out" | "back", place: MarkPlace, markKind: string, sizeMm: number): Content => ({
  about: "body.nearside",
  direction,
  part: "body.nearside",
  view: "nearside",
  ...place,
  markKind,
  sizeMm,
  note: "",
  photographs: [],
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
  add("mark", mark(direction, { xShare: 0.2, yShare: 0.55 }, "scratch", 40));
  add("mark", mark(direction, { xShare: 0.5, yShare: 0.55 }, "dent", 25));
  if (direction === "back") add("mark", mark(direction, newPlace(at), "scratch", 120));
  for (const purpose of direction === "out" ? ["agreement", "briefing", "condition"] : ["condition"])
    sign(purpose);
  add("walkFinished", { direction });
  return records;
}
