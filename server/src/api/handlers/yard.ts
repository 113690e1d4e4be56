import { composeWalkRound, type WalkRound, windowsOf } from "@setfair/engine";
import type { z } from "zod";
import { conditionOf } from "../../desk/after-hire.ts";
import { briefingFor } from "../../desk/briefing.ts";
import { asDocument, type DepotDocument } from "../../desk/documents.ts";
import { forecastOf } from "../../desk/forecast.ts";
import { glassOf, plainFinding } from "../../desk/glass.ts";
import { type HireData, readRow } from "../../desk/hire-data.ts";
import { knownMarks } from "../../desk/known-marks.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { missingSignatures } from "../../desk/paper-gates.ts";
import { type Direction, directionOf, walkFacts, wholeRecords } from "../../desk/record-facts.ts";
import { secondLookOf } from "../../desk/second-look.ts";
import { comfortDefects } from "../../desk/told-defects.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import type { yardJobSchema } from "../schemas/yard.ts";

type YardJob = z.input<typeof yardJobSchema>;
const AWAY: readonly string[] = ["handedOver", "onHire", "returned"];

/** What a tablet compares with: how the vehicle was. What the hirer signed and said stays at the depot. */
const OF_THE_VEHICLE: ReadonlySet<string> = new Set([
  "walkStarted",
  "walkFinished",
  "reading",
  "count",
  "look",
  "mark",
  "photograph",
  "correction",
]);

/** Each vehicle that a hire is to go with has a walk-round of its own: another chain on the device. */
function walkChain({ row, changes }: HireData, walk: Direction): string {
  const before = changes.filter(({ kind }) => kind === "vehicle").length;
  return before === 0 ? `${row.id}.${walk}` : `${row.id}~${before}.${walk}`;
}

/** The second look after the wash is a walk-round of its own: only what could not be judged, on a chain of its own. */
async function secondLookJob(store: Store, data: HireData, back: YardJob): Promise<YardJob | null> {
  if (!walkFacts(data.records, "back").finished) return null;
  const look = secondLookOf(data, (await conditionOf(store, data)).result);
  if (!look.holds) return null;
  const round = back.walkRound as WalkRound; // made in jobOf
  const steps = round.steps
    .map((step) => ({ ...step, checks: step.checks.filter(({ id }) => look.due.includes(id)) }))
    .filter(({ checks }) => checks.length > 0);
  return {
    ...back,
    id: `${data.row.id}~look.back`,
    walkRound: { ...round, steps },
    signaturesNeeded: ["condition"],
    secondLook: { until: look.until },
    done: false,
  };
}

async function jobOf(store: Store, data: HireData, walk: Direction): Promise<YardJob | null> {
  if (data.vehicle === null) return null;
  const { version, document } = data.vehicle;
  const forecast = await forecastOf(store, data);
  const own = wholeRecords(data.records);
  return {
    id: walkChain(data, walk),
    walk,
    due: walk === "out" ? data.from : data.to,
    hireId: data.row.id,
    reference: data.row.number,
    customer: data.row.customerName,
    stage: data.row.stage,
    vehicle: {
      id: version.of,
      versionId: version.versionId,
      name: document.description.name,
      registration: document.description.registration,
      description: document.description,
    },
    walkRound: composeWalkRound(document.description, walk),
    knownMarks: await knownMarks(store, version.of, data.row.id),
    outRecords:
      walk === "back"
        ? own.filter((record) => directionOf(record) === "out" && OF_THE_VEHICLE.has(record.kind))
        : [],
    signaturesNeeded:
      walk === "out"
        ? [...missingSignatures(data)]
        : walkFacts(data.records, "back").signed
          ? []
          : ["condition"],
    briefing: walk === "out" ? (briefingFor(data, forecast?.answer ?? null)?.result ?? null) : null,
    conditions: walk === "out" ? glassOf(data, forecast?.answer ?? null).conditions.map(plainFinding) : [],
    defects: walk === "out" ? comfortDefects(data.upkeep, data.disclosures) : [],
    windows: windowsOf(data.terms?.document ?? null),
    secondLook: null,
    done: walkFacts(data.records, walk).finished,
  };
}

export const yardHandlers = {
  /** Walk-rounds due by the end of the day, and those that are late; what came back early is there too. */
  async yardJobs({ context, signed, query }) {
    const { store } = signed;
    const depot = await store.depot.get();
    const date = query.date ?? dateOf(localOf(context.now().toISOString(), depot.timeZone));
    const { rows } = await store.hires.list({
      stages: ["booked", "handedOver", "onHire", "returned"],
      limit: 200,
    });
    const jobs: YardJob[] = [];
    for (const row of rows) {
      const data = await readRow(store, row, depot, context.now());
      const outDue = row.stage === "booked" && dateOf(data.from) <= date;
      const backDue = row.stage === "returned" || (AWAY.includes(row.stage) && dateOf(data.to) <= date);
      if (!outDue && !backDue) continue;
      const job = await jobOf(store, data, outDue ? "out" : "back");
      if (job === null) continue;
      jobs.push(job);
      const again = outDue ? null : await secondLookJob(store, data, job);
      if (again !== null) jobs.push(again);
    }
    const { distances = "km" as const } = asDocument<DepotDocument>(depot.document);
    return { date, distances, jobs: jobs.sort((a, b) => (a.due < b.due ? -1 : 1)) };
  },
} satisfies Partial<Handlers>;
