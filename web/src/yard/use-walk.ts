import type { MarkKind, View, WalkRound, WalkRoundCheck } from "@setfair/engine";
import type { DepotRecord, JsonObject, RecordKind } from "@setfair/records";
import { useLiveQuery } from "dexie-react-hooks";
import { useCallback, useMemo, useState } from "react";
import type { YardJob } from "../offline/database.ts";
import { keepPhotograph } from "../offline/keep-photograph.ts";
import { keepRecord, recordsOfChain } from "../offline/keep-record.ts";
import { device } from "./device.ts";
import { type Late, readWalk, type Walk } from "./walk-state.ts";

/** Where the person is in the walk-round; kept on the device at every touch. */
export interface Place {
  /** a side, or one of the pages after them */
  readonly page: number | "summary" | "briefing" | "agreement" | "condition";
  /** check or part that is open */
  readonly open: { readonly check: string | null; readonly part: string | null } | null;
  readonly mark: MarkDraft | null;
  readonly typed: string;
}
export interface MarkDraft {
  readonly xShare: number;
  readonly yShare: number;
  readonly markKind: MarkKind | null;
  readonly sizeMm: number | null;
  readonly note: string;
}
export const START: Place = { page: 0, open: null, mark: null, typed: "" };

/** what a photograph of a filled-in sheet is about */
export const SHEET = "sheet";

const isStart = ({ kind }: DepotRecord): boolean => kind === "walkStarted";

export interface WalkActs {
  readonly records: readonly DepotRecord[];
  readonly walk: Walk;
  readonly out: Walk;
  readonly round: WalkRound;
  readonly place: Place;
  goTo(place: Place): Promise<unknown>;
  /** begins the walk-round, as keyed in from paper where `late` says so; does nothing once begun */
  begin(late: Late | null): Promise<unknown>;
  keep(
    kind: RecordKind,
    content: JsonObject,
    photographs?: readonly string[],
    place?: Place,
  ): Promise<DepotRecord>;
  /** a signature says nothing beyond its own fields, so no direction is added; its chain tells it */
  sign(content: JsonObject, place: Place): Promise<DepotRecord>;
  photograph(
    bytes: Uint8Array<ArrayBuffer>,
    about: string,
    view: View,
    check: WalkRoundCheck | null,
  ): Promise<string>;
}

/** The walk-round of a job as it stands on this device; null until it is read. */
export function useWalk(job: YardJob): WalkActs | null {
  const { db, flusher } = device();
  const kept = useLiveQuery(() => recordsOfChain(db, job.id), [job.id]);
  const stored = useLiveQuery(
    async () => ((await db.rounds.get(job.id))?.state as Place | undefined) ?? START,
    [job.id],
  );
  // what was touched last shows at once; the device's store follows
  const [touched, setTouched] = useState<Place | null>(null);
  const place = touched ?? stored;
  const goTo = useCallback(
    async (next: Place) => {
      setTouched(next);
      await db.rounds.put({ jobId: job.id, state: next });
    },
    [db, job.id],
  );
  const records = useMemo(() => (kept ?? []).map(({ record }) => record), [kept]);
  const walk = useMemo(() => readWalk(records), [records]);
  // what the server sends are whole records; the API types them loosely
  const out = useMemo(() => readWalk(job.outRecords as unknown as DepotRecord[]), [job]);
  if (kept === undefined || place === undefined) return null;

  const refs = { hireId: job.hireId, vehicleId: job.vehicle.id };
  // the first thing that is kept says when the walk-round began; what brought the vehicle back late rests on it
  const begin = async (late: Late | null = null) => {
    if (records.some(isStart) || (await recordsOfChain(db, job.id)).some(({ record }) => isStart(record)))
      return;
    const content: JsonObject = { direction: job.walk, ...(late === null ? {} : { late: { ...late } }) };
    await keepRecord(db, { kind: "walkStarted", refs, chain: job.id, content, via: "staff" });
  };
  return {
    begin: async (late) => {
      await begin(late);
      void flusher.now();
    },
    records,
    walk,
    out,
    round: job.walkRound as WalkRound,
    place,
    goTo,
    sign: async (content, next) => {
      const input = { kind: "signature" as const, refs, chain: job.id, content, via: "staff" as const };
      const record = await keepRecord(db, input, () => goTo(next));
      void flusher.now();
      return record;
    },
    keep: async (kind, content, photographs = [], next = place) => {
      await begin();
      const record = await keepRecord(
        db,
        {
          kind,
          refs,
          chain: job.id,
          content: { ...content, direction: job.walk },
          via: "staff",
          photographs,
        },
        () => goTo(next),
      );
      void flusher.now();
      return record;
    },
    photograph: async (bytes, about, view, check) => {
      if (about !== SHEET) await begin();
      const content = { about, view, direction: job.walk, ...(check === null ? {} : { checkId: check.id }) };
      const sha256 = await keepPhotograph(db, { bytes, content, refs, chain: job.id, via: "staff" });
      void flusher.now();
      return sha256;
    },
  };
}
