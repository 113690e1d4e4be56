import { GATES, leadTimesSchema, USUAL_JOB_MINUTES } from "@setfair/engine";
import * as z from "zod";
import { named } from "./named.ts";

/** minutes for one person */
const minutes = z.int().min(0).max(600);
const times = {
  handOverMinutes: minutes,
  takeBackMinutes: minutes,
  demonstrationMinutes: z.strictObject({ first: minutes, some: minutes, knowsThisVehicle: minutes }),
  /** by the code of a turnaround job */
  jobMinutes: z.record(z.enum(Object.keys(USUAL_JOB_MINUTES)), minutes),
  /** hours before the keys from which a gate counts */
  leadHours: z.record(z.enum(GATES), leadTimesSchema.def.valueType),
};

export const putDepotTimesSchema = named("PutDepotTimes", z.strictObject(times));
export const depotTimesSchema = named(
  "DepotTimes",
  z.object({
    times: putDepotTimesSchema,
    /** what holds where a depot has entered nothing: common practice, no source */
    usual: putDepotTimesSchema,
    /** of the times alone: what a save is based on */
    version: z.string(),
  }),
);
