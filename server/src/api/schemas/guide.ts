import { tripSchema } from "@setfair/engine";
import * as z from "zod";
import { hashSchema, idSchema, instantSchema, localSchema, roomResultSchema } from "./common.ts";
import { faultsSchema } from "./help.ts";
import { stageSchema } from "./hires.ts";
import { named } from "./named.ts";

/** Everything that the hirer's phone needs, once, to work with no signal. Their own hire only. */
export const guideSchema = named(
  "Guide",
  z.object({
    hireId: idSchema,
    reference: z.string(),
    customer: z.string(),
    stage: stageSchema,
    from: localSchema,
    to: localSchema,
    expires: instantSchema,
    firm: z.string(),
    depot: z.object({ name: z.string(), telephone: z.string() }),
    vehicle: z.object({
      id: idSchema,
      name: z.string(),
      registration: z.string(),
      description: z.unknown().describe("engine: VehicleDescription"),
    }),
    trip: z.nullable(tripSchema),
    /** what forecastTrip was given, so that the phone can run it again (engine: TripInput) */
    forecastInput: roomResultSchema,
    /** the forecast as the depot saw it */
    forecast: roomResultSchema,
    forecastHash: hashSchema.nullable(),
    /** briefing cards in order (engine: Briefing) */
    briefing: roomResultSchema,
    /** what can fail on this vehicle, and what the depot has found behind it */
    faults: faultsSchema,
    /** readings of the panel sent so far */
    readings: z.array(z.unknown()),
  }),
);
