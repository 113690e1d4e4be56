import * as z from "zod";
import {
  dateSchema,
  distancesSchema,
  findingSchema,
  idSchema,
  instantSchema,
  localSchema,
  roomResultSchema,
} from "./common.ts";
import { stageSchema } from "./hires.ts";
import { named } from "./named.ts";
import { recordSchema } from "./records.ts";
import { markSchema } from "./vehicles.ts";

export const yardJobSchema = named(
  "YardJob",
  z.object({
    /** `<hireId>.out` or `<hireId>.back` */
    id: idSchema,
    walk: z.enum(["out", "back"]),
    due: localSchema,
    hireId: idSchema,
    reference: z.string(),
    customer: z.string(),
    stage: stageSchema,
    vehicle: z.object({
      id: idSchema,
      name: z.string(),
      registration: z.string(),
      versionId: idSchema,
      description: z.unknown().describe("engine: VehicleDescription"),
    }),
    /** the walk-round in order (engine: WalkRound); ids of checks, views and parts */
    walkRound: roomResultSchema,
    /** marks known before this walk-round */
    knownMarks: z.array(markSchema),
    /** for the walk back: the records of the walk out, so that each step can show how it left */
    outRecords: z.array(recordSchema),
    /** purposes of the signatures still missing before the keys, one signature record each */
    signaturesNeeded: z.array(z.string()),
    /** briefing cards in order (engine: Briefing), signed item by item with `briefed` records */
    briefing: roomResultSchema,
    /** what goes with the vehicle, printed and signed */
    conditions: z.array(findingSchema),
    /** for the walk out: open defects of comfort that the hirer is told of and signs for */
    defects: z.array(z.object({ id: idSchema, what: z.string(), where: z.string(), told: z.boolean() })),
    /** hours that are signed for: the hirer's own additions after the keys, the second look after the return */
    windows: z.object({ additionsHours: z.int(), secondLookHours: z.int() }),
    /** where this is the second look after the wash: by when */
    secondLook: z.object({ until: instantSchema }).nullable(),
    done: z.boolean(),
  }),
);
export const yardJobsSchema = named(
  "YardJobs",
  z.object({ date: dateSchema, distances: distancesSchema, jobs: z.array(yardJobSchema) }),
);
export const yardQuerySchema = z.object({ date: dateSchema.optional() });
