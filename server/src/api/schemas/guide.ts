import { tripSchema } from "@setfair/engine";
import * as z from "zod";
import {
  distancesSchema,
  hashSchema,
  idSchema,
  instantSchema,
  localSchema,
  roomResultSchema,
} from "./common.ts";
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
    depot: z.object({ name: z.string(), telephone: z.string(), distances: distancesSchema }),
    vehicle: z.object({
      id: idSchema,
      name: z.string(),
      registration: z.string(),
      description: z.unknown().describe("engine: VehicleDescription"),
    }),
    trip: z.nullable(tripSchema),
    /** each country of the route: limits, kit, zones, tolls, nights, alcohol, and what they rest on */
    countries: z.array(
      z.object({ card: z.unknown().describe("engine: CountryCard"), sources: z.array(z.string()) }),
    ),
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
    /** until when the hirer may add marks that both missed; null before the keys went */
    additions: z.nullable(z.object({ until: instantSchema, isOver: z.boolean() })),
    /** when the statement was shown; null where there is none yet */
    statementAt: z.nullable(instantSchema),
  }),
);

/** What the hirer added to the walk-round from their own phone, for the desk. */
export const hirerAdditionsSchema = named(
  "HirerAdditions",
  z.object({
    until: instantSchema.nullable(),
    isOver: z.boolean(),
    additions: z.array(
      z.object({
        recordId: idSchema,
        /** by the phone's clock */
        at: instantSchema,
        /** by the depot's */
        receivedAt: instantSchema,
        /** arrived after the window: made in time only by the phone's own clock */
        isLate: z.boolean(),
        part: z.string(),
        view: z.string(),
        markKind: z.string(),
        note: z.string(),
        photographs: z.array(z.string()),
      }),
    ),
  }),
);
