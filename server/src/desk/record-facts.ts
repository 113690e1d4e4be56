import {
  type ConditionRecord,
  conditionContentSchema,
  READABLE_STORES,
  READING_UNITS,
  type Reading,
} from "@setfair/engine";
import { type DepotRecord, isErased, withCorrections } from "@setfair/records";
import type { StoredRecord } from "../store/types.ts";
import { localOf } from "./local-time.ts";

export type Direction = "out" | "back";

export const wholeRecords = (records: readonly StoredRecord[]): readonly DepotRecord[] =>
  records.filter((record): record is DepotRecord => !isErased(record));

/** Which walk-round a record belongs to: as it says, else by its chain; null on the road. */
export function directionOf(record: DepotRecord): Direction | null {
  const said = record.content.direction;
  if (said === "out" || said === "back") return said;
  if (record.chain.endsWith(".out")) return "out";
  return record.chain.endsWith(".back") ? "back" : null;
}

/** Records of a walk-round as the condition room takes them, as corrected; what it cannot use is left out. */
export function conditionRecords(
  records: readonly StoredRecord[],
  direction: Direction,
): readonly ConditionRecord[] {
  return withCorrections(records)
    .filter(({ record }) => directionOf(record) === direction)
    .flatMap(({ record, content: holds }) => {
      const content = conditionContentSchema.safeParse(contentOf({ ...record, content: holds }));
      return content.success ? [{ recordId: record.id, content: content.data }] : [];
    });
}

/** The envelope's own words (`about`, `found`, `saw`) in those of the condition room. */
function contentOf({ kind, content }: DepotRecord): unknown {
  const { about, photographs } = content;
  const shots = photographs === undefined ? {} : { photographs };
  switch (kind) {
    case "reading":
      return { kind, checkId: content.checkId ?? about, value: content.value, unit: content.unit, ...shots };
    case "look":
      return { kind, checkId: content.checkId ?? about, outcome: content.outcome ?? content.saw, ...shots };
    case "count":
      return {
        kind,
        checkId: content.checkId ?? about,
        counted: content.found,
        expected: content.expected,
        ...shots,
      };
    case "mark":
      return {
        kind,
        ...(content.checkId === undefined ? {} : { checkId: content.checkId }),
        part: content.part ?? about,
        view: content.view,
        xShare: content.xShare,
        yShare: content.yShare,
        markKind: content.markKind,
        ...(content.sizeMm === undefined || content.sizeMm === null ? {} : { sizeMm: content.sizeMm }),
        ...(content.note === undefined || content.note === null ? {} : { note: content.note }),
        photographs: photographs ?? [],
      };
    default:
      return null;
  }
}

export interface SignatureFact {
  readonly purpose: string;
  readonly direction: Direction | null;
  readonly by: string;
  readonly at: string;
  readonly recordId: string;
  readonly covers: number;
}

export function signaturesOf(records: readonly StoredRecord[]): readonly SignatureFact[] {
  return wholeRecords(records)
    .filter(({ kind }) => kind === "signature")
    .map((record) => {
      const {
        purpose,
        signer,
        records: covered,
      } = record.content as {
        readonly purpose: string;
        readonly signer: { readonly name: string };
        readonly records: readonly unknown[];
      };
      return {
        purpose,
        direction: directionOf(record),
        by: signer.name,
        at: record.deviceTime,
        recordId: record.id,
        covers: covered.length,
      };
    });
}

export interface WalkFacts {
  readonly started: boolean;
  readonly finished: boolean;
  readonly marks: number;
  readonly photos: number;
  readonly readings: number;
  readonly signed: boolean;
}

/** What has arrived of one walk-round. */
export function walkFacts(records: readonly StoredRecord[], direction: Direction): WalkFacts {
  // what the hirer added afterwards is no part of the round that was signed
  const own = wholeRecords(records).filter(
    (record) => directionOf(record) === direction && record.content.by !== "hirer",
  );
  const count = (kind: string) => own.filter((record) => record.kind === kind).length;
  const photos = new Set(
    own.flatMap(({ content }) => [
      content.sha256,
      ...(Array.isArray(content.photographs) ? content.photographs : []),
    ]),
  );
  photos.delete(undefined as never);
  return {
    started: own.length > 0,
    finished: count("walkFinished") > 0 || signaturesOf(own).some(({ purpose }) => purpose === "condition"),
    marks: count("mark"),
    photos: photos.size,
    readings: count("reading") + count("count"),
    signed: signaturesOf(own).some(({ purpose }) => purpose === "condition"),
  };
}

/** What the hirer read on the panel on the road, as the trip room takes it, oldest first. */
export function panelReadings(records: readonly StoredRecord[], timeZone: string): readonly Reading[] {
  return wholeRecords(records)
    .filter((record) => record.kind === "reading" && directionOf(record) === null)
    .flatMap((record) => readingOf(record, timeZone))
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

function readingOf({ content, deviceTime }: DepotRecord, timeZone: string): Reading[] {
  const store = READABLE_STORES.find((id) => id === content.about);
  const unit = READING_UNITS.find((id) => id === content.unit);
  if (
    store === undefined ||
    unit === undefined ||
    typeof content.value !== "number" ||
    content.value < 0 ||
    content.value > 10_000
  )
    return [];
  const at = typeof content.at === "string" ? content.at : deviceTime;
  return [{ store, value: content.value, unit, at: localOf(at, timeZone) }];
}
