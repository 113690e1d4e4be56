import * as z from "zod";
import { named } from "./named.ts";

export const foundPlaceSchema = named(
  "FoundPlace",
  z.object({
    name: z.string(),
    country: z.string(),
    latitudeDeg: z.number(),
    longitudeDeg: z.number(),
    elevationM: z.number(),
    timeZone: z.string(),
    population: z.int(),
  }),
);
export const placesSchema = named("Places", z.object({ places: z.array(foundPlaceSchema) }));
/** engine: the input of forecastTrip and planStops */
export const tripQuestionSchema = named(
  "TripQuestion",
  z.object({ inputHash: z.string(), input: z.unknown() }),
);
