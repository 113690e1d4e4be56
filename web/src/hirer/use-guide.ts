import type { Reading, TripForecast } from "@setfair/engine/trip";
import type { DepotRecord, JsonObject } from "@setfair/records";
import { useEffect, useMemo, useState } from "react";
import type { Guide, KeptRecord } from "../offline/database.ts";
import { fetchGuide, type GuideAnswer } from "../offline/fetch-guide.ts";
import { writeDistancesIn } from "../parts/words.ts";
import { civilNow } from "./local-time.ts";
import { phone } from "./phone.ts";
import { useForecast } from "./use-forecast.ts";
import { useKeptGuide } from "./use-kept-guide.ts";
import { useRecords } from "./use-records.ts";

export interface HirerGuide {
  readonly guide: Guide | null | undefined;
  readonly answer: GuideAnswer["outcome"] | "asking";
  /** busy: not known yet · kept: what is shown is on this phone · not: this phone could not keep it */
  readonly keeping: "busy" | "kept" | "not";
  readonly forecast: TripForecast | null;
  /** running: the trip is lived again · failed: in the engine's own words */
  readonly running: boolean;
  readonly failed: string | null;
  readonly readings: readonly Reading[];
  /** readings not sent yet */
  readonly waiting: number;
  /** what was tried when something failed, not sent yet */
  readonly helpWaiting: number;
  /** rejects where this phone can keep nothing */
  read(reading: Reading): Promise<void>;
  /** keeps what was tried; the same end of the same fault once */
  tell(help: JsonObject): Promise<void>;
}

const readingOf = ({ content }: DepotRecord): Reading =>
  ({ store: content.about, value: content.value, unit: content.unit, at: content.local }) as Reading;

/** What the two lists say together, each reading once. */
function joinReadings(sent: readonly Reading[], own: readonly Reading[]): readonly Reading[] {
  const seen = new Map<string, Reading>();
  for (const reading of [...sent, ...own]) {
    const { store, value, unit, at } = reading;
    seen.set(`${store} ${value} ${unit} ${at}`, { store, value, unit, at });
  }
  return [...seen.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/** The depot's answer, asked for at once and again whenever there is signal. */
function useAsked(token: string): GuideAnswer | "asking" {
  const [answer, setAnswer] = useState<GuideAnswer | "asking">("asking");
  useEffect(() => {
    const ask = () => void fetchGuide(token).then(setAnswer);
    ask();
    addEventListener("online", ask);
    return () => removeEventListener("online", ask);
  }, [token]);
  return answer;
}

/** The hirer's guide, from the depot or from this phone's own store, and the forecast after what was read on the panel. */
export function useGuide(token: string): HirerGuide {
  const answer = useAsked(token);
  const { kept, keeping } = useKeptGuide(token, answer);
  // what has just come is shown at once; a slow phone takes a second to keep it
  const [fresh, setFresh] = useState<Guide | null>(null);
  if (answer !== "asking" && answer.outcome === "fresh" && answer.guide !== fresh) setFresh(answer.guide);
  const guide = fresh ?? kept;
  if (guide != null) writeDistancesIn(guide.depot.distances ?? "km");
  const chain = guide == null ? null : `${guide.hireId}.road`;
  const records = useRecords(chain, keeping !== "busy");
  const readings = useMemo(
    () =>
      joinReadings(
        (guide?.readings ?? []) as readonly Reading[],
        records.filter(({ record }) => record.kind === "reading").map(({ record }) => readingOf(record)),
      ),
    [guide, records],
  );
  const { forecast, running, failed } = useForecast(guide ?? null, readings);
  return {
    guide,
    answer: answer === "asking" ? answer : answer.outcome,
    keeping,
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
      const refs = { hireId: guide.hireId };
      await (await phone()).keep({ kind: "reading", refs, chain, content, via: { token } });
    },
    tell: async (content) => {
      if (guide == null || chain === null) return;
      const refs = { hireId: guide.hireId };
      await (await phone()).keepIfNew({ kind: "help", refs, chain, content, via: { token } });
    },
  };
}

const waitingOf = (records: readonly KeptRecord[], kind: string): number =>
  records.filter(({ state, record }) => state === "waiting" && record.kind === kind).length;

/** A civil time in a zone as an instant; searched for, since browsers convert only the other way. */
function instantOf(local: string, timeZone: string): string {
  const asUtc = Date.parse(`${local}:00Z`);
  const offset = Date.parse(`${civilNow(timeZone, new Date(asUtc))}:00Z`) - asUtc;
  const guess = asUtc - offset;
  // once more, for the hours round a clock change
  const off = Date.parse(`${civilNow(timeZone, new Date(guess))}:00Z`) - guess;
  return new Date(asUtc - off).toISOString();
}
