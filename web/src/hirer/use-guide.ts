import type { Reading, TripForecast, TripInput } from "@setfair/engine/trip";
import { canonicalJson, type DepotRecord, type JsonObject } from "@setfair/records";
import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useMemo, useState } from "react";
import { DeviceDatabase, type Guide, type KeptRecord } from "../offline/database.ts";
import { askToKeep } from "../offline/device.ts";
import { fetchGuide, type GuideAnswer } from "../offline/fetch-guide.ts";
import { type Flusher, startFlusher } from "../offline/flusher.ts";
import { keepRecord, recordsOfChain } from "../offline/keep-record.ts";
import { civilNow } from "./local-time.ts";
import { reforecastHere } from "./reforecast.ts";

let made: { readonly db: DeviceDatabase; readonly flusher: Flusher } | undefined;
const phone = () => {
  if (made === undefined) {
    const db = new DeviceDatabase();
    made = { db, flusher: startFlusher(db) };
    void askToKeep();
  }
  return made;
};

export interface HirerGuide {
  readonly guide: Guide | null | undefined;
  readonly answer: GuideAnswer | "asking";
  readonly forecast: TripForecast | null;
  /** running: the trip is lived again · failed: in the engine's own words */
  readonly running: boolean;
  readonly failed: string | null;
  readonly readings: readonly Reading[];
  /** readings not sent yet */
  readonly waiting: number;
  /** what was tried when something failed, not sent yet */
  readonly helpWaiting: number;
  read(reading: Reading): Promise<void>;
  /** keeps what was tried; the same end of the same fault once */
  tell(help: JsonObject): Promise<void>;
}

/** The forecast of a room answer or by itself. */
function forecastOf(value: unknown): TripForecast | null {
  if (value === null || typeof value !== "object") return null;
  const inner = "result" in value ? (value as { result: unknown }).result : value;
  return inner !== null && typeof inner === "object" && "stores" in inner ? (inner as TripForecast) : null;
}

const readingOf = ({ content }: DepotRecord): Reading =>
  ({ store: content.about, value: content.value, unit: content.unit, at: content.local }) as Reading;

/** What the two lists say together, each reading once. */
export function joinReadings(sent: readonly Reading[], own: readonly Reading[]): readonly Reading[] {
  const seen = new Map<string, Reading>();
  for (const reading of [...sent, ...own]) {
    const { store, value, unit, at } = reading;
    seen.set(`${store} ${value} ${unit} ${at}`, { store, value, unit, at });
  }
  return [...seen.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/** The hirer's guide from this phone's own store, and the forecast after what was read on the panel. */
export function useGuide(token: string): HirerGuide {
  const { db, flusher } = phone();
  const [answer, setAnswer] = useState<GuideAnswer | "asking">("asking");
  // what has just come is shown at once; a slow phone takes a second to keep it
  const [fresh, setFresh] = useState<Guide | null>(null);
  useEffect(() => {
    const ask = () => void fetchGuide(db, token, fetch, setFresh).then(setAnswer);
    ask();
    addEventListener("online", ask);
    return () => removeEventListener("online", ask);
  }, [db, token]);
  const kept = useLiveQuery(async () => (await db.guides.get(token)) ?? null, [token]);
  const guide = fresh ?? (kept === undefined ? undefined : (kept?.guide ?? null));
  const chain = guide == null ? null : `${guide.hireId}.road`;
  const records = useLiveQuery(async () => (chain === null ? [] : recordsOfChain(db, chain)), [chain]);

  const readings = useMemo(
    () =>
      joinReadings(
        (guide?.readings ?? []) as readonly Reading[],
        (records ?? [])
          .filter(({ record }) => record.kind === "reading")
          .map(({ record }) => readingOf(record)),
      ),
    [guide, records],
  );
  const { forecast, running, failed } = useForecast(guide ?? null, readings);
  return {
    guide,
    answer,
    forecast,
    running,
    failed,
    readings,
    waiting: waitingOf(records, "reading"),
    helpWaiting: waitingOf(records, "help"),
    read: async (reading) => {
      if (guide == null || chain === null) return;
      const content = {
        about: reading.store,
        value: reading.value,
        unit: reading.unit,
        at: instantOf(reading.at, guide.trip?.timeZone ?? "UTC"),
        local: reading.at,
      };
      await keepRecord(db, {
        kind: "reading",
        refs: { hireId: guide.hireId },
        chain,
        content,
        via: { token },
      });
      void flusher.now();
    },
    tell: async (help) => {
      if (guide == null || chain === null) return;
      const { hireId } = guide;
      telling = telling.then(() => keepHelp(db, hireId, chain, token, help)).catch(() => undefined);
      await telling;
      void flusher.now();
    },
  };
}

const waitingOf = (records: readonly KeptRecord[] | undefined, kind: string): number =>
  (records ?? []).filter(({ state, record }) => state === "waiting" && record.kind === kind).length;

/** One after the other, so that two touches keep one record. */
let telling: Promise<unknown> = Promise.resolve();

async function keepHelp(
  db: DeviceDatabase,
  hireId: string,
  chain: string,
  token: string,
  content: JsonObject,
): Promise<void> {
  const own = await recordsOfChain(db, chain);
  const last = own.findLast(({ record }) => record.kind === "help" && record.content.about === content.about);
  if (last !== undefined && canonicalJson(last.record.content) === canonicalJson(content)) return;
  await keepRecord(db, { kind: "help", refs: { hireId }, chain, content, via: { token } });
}

function useForecast(guide: Guide | null, readings: readonly Reading[]) {
  const first = useMemo(() => forecastOf(guide?.forecast), [guide]);
  const [again, setAgain] = useState<{
    readonly forecast: TripForecast | null;
    readonly running: boolean;
    readonly failed: string | null;
  }>({
    forecast: null,
    running: false,
    failed: null,
  });
  const input = (guide?.forecastInput ?? null) as TripInput | null;
  const key = JSON.stringify(readings);
  useEffect(() => {
    const list = JSON.parse(key) as readonly Reading[];
    if (input === null || list.length === 0) return;
    let current = true;
    setAgain((before) => ({ ...before, running: true, failed: null }));
    reforecastHere(input, list)
      .then((forecast) => current && setAgain({ forecast, running: false, failed: null }))
      .catch(
        (error: Error) =>
          current && setAgain((before) => ({ ...before, running: false, failed: error.message })),
      );
    return () => {
      current = false;
    };
  }, [input, key]);
  return { forecast: again.forecast ?? first, running: again.running, failed: again.failed };
}

/** A civil time in a zone as an instant; searched for, since browsers convert only the other way. */
export function instantOf(local: string, timeZone: string): string {
  const asUtc = Date.parse(`${local}:00Z`);
  const offset = Date.parse(`${civilNow(timeZone, new Date(asUtc))}:00Z`) - asUtc;
  const guess = asUtc - offset;
  // once more, for the hours round a clock change
  const off = Date.parse(`${civilNow(timeZone, new Date(guess))}:00Z`) - guess;
  return new Date(asUtc - off).toISOString();
}
