import { canonicalJson } from "@setfair/records";
import { liveQuery, type Observable } from "dexie";
import { DeviceDatabase, type Guide, type KeptRecord } from "../offline/database.ts";
import { askToKeep } from "../offline/device.ts";
import { keepGuide } from "../offline/fetch-guide.ts";
import { startFlusher } from "../offline/flusher.ts";
import { type Evidence, keepEvidence } from "../offline/keep-evidence.ts";
import { keepRecord, type RecordToKeep, recordsOfChain } from "../offline/keep-record.ts";
import { type KeptStatement, keepStatement, keptStatement, type Statement } from "../offline/statement.ts";

/** What this phone keeps. Comes after the first card is drawn: nothing of it is needed to read that. */
export interface PhoneStore {
  /** hears the guide that is kept, now and whenever it changes; null where there is none or nothing can be read */
  watchGuide(token: string, hear: (guide: Guide | null) => void): () => void;
  /** likewise this phone's own records of a chain, in order */
  watchChain(chain: string, hear: (records: readonly KeptRecord[]) => void): () => void;
  /** false where this phone could not keep it */
  keepGuide(token: string, guide: Guide): Promise<boolean>;
  /** keeps a record and sends it when it can; rejects where nothing can be kept */
  keep(record: RecordToKeep): Promise<void>;
  /** likewise a record with the pictures that it names, all or nothing */
  keepEvidence(evidence: Evidence): Promise<void>;
  /** keeps the statement as it was shown last; false where this phone could not */
  keepStatement(token: string, statement: Statement): Promise<boolean>;
  statement(token: string): Promise<KeptStatement | null>;
  /** likewise, but not where the last of its kind about the same thing says the very same */
  keepIfNew(record: RecordToKeep): Promise<void>;
}

function watch<Value>(query: Observable<Value>, hear: (value: Value) => void, broken: Value): () => void {
  const watching = query.subscribe({
    next: hear,
    error: (error: unknown) => {
      console.warn("phone store", error);
      hear(broken);
    },
  });
  return () => watching.unsubscribe();
}

/** Opens this phone's own store and begins to send what waits in it. */
export function openPhoneStore(): PhoneStore {
  const db = new DeviceDatabase();
  const flusher = startFlusher(db);
  void askToKeep();
  let last: Promise<unknown> = Promise.resolve();
  const keep = async (record: RecordToKeep) => {
    await keepRecord(db, record);
    void flusher.now();
  };
  return {
    watchGuide: (token, hear) =>
      watch(
        liveQuery(async () => (await db.guides.get(token))?.guide ?? null),
        hear,
        null,
      ),
    watchChain: (chain, hear) =>
      watch(
        liveQuery(() => recordsOfChain(db, chain)),
        hear,
        [],
      ),
    keepGuide: (token, guide) => keepGuide(db, token, guide),
    keep,
    keepEvidence: async (evidence) => {
      await keepEvidence(db, evidence);
      void flusher.now();
    },
    keepStatement: (token, statement) => keepStatement(db, token, statement),
    statement: (token) => keptStatement(db, token),
    keepIfNew: (record) => {
      // one after the other, so that two touches keep one record
      const next = last.then(async () => {
        if (!(await saidAlready(db, record))) await keep(record);
      });
      last = next.catch(() => undefined);
      return next;
    },
  };
}

async function saidAlready(db: DeviceDatabase, { chain, kind, content }: RecordToKeep): Promise<boolean> {
  const before = (await recordsOfChain(db, chain)).findLast(
    ({ record }) => record.kind === kind && record.content.about === content.about,
  );
  return before !== undefined && canonicalJson(before.record.content) === canonicalJson(content);
}
