import * as z from "zod";
import { named } from "./named.ts";

export const weatherServiceSchema = named(
  "WeatherService",
  z.object({
    /** who would be credited; null where nobody set a service on this server */
    credit: z.string().nullable(),
    /** this depot fetches from it */
    isOn: z.boolean(),
  }),
);
export const putWeatherServiceSchema = named("PutWeatherService", z.strictObject({ isOn: z.boolean() }));
