import type { SeriesPoint } from "@setfair/engine";
import * as z from "zod";
import { WeatherUnavailable } from "./weather-service.ts";

/**
 * GeoJSON of a forecast for one point (the open format of the Norwegian Meteorological Institute's service): a time
 * series with the air temperature in °C and the cloud in % at each instant. What else it holds is left alone.
 */
const forecastSchema = z.object({
  properties: z.object({
    meta: z.object({ units: z.object({ air_temperature: z.literal("celsius") }) }),
    timeseries: z
      .array(
        z.object({
          time: z.iso.datetime({ offset: true }),
          data: z.object({
            instant: z.object({
              details: z.object({
                air_temperature: z.number().min(-70).max(60),
                cloud_area_fraction: z.number().min(0).max(100).optional(),
              }),
            }),
          }),
        }),
      )
      .max(1000),
  }),
});

/** Reads what a service answered; throws WeatherUnavailable where it is something else. */
export function readSeries(text: string): readonly SeriesPoint[] {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (cause) {
    throw new WeatherUnavailable("unreadable", { cause });
  }
  const read = forecastSchema.safeParse(json);
  if (!read.success) throw new WeatherUnavailable("unreadable", { cause: read.error });
  return read.data.properties.timeseries
    .map(({ time, data }): SeriesPoint => {
      const { air_temperature: airC, cloud_area_fraction: cloud } = data.instant.details;
      return { epochMs: Date.parse(time), airC, cloudShare: cloud === undefined ? null : cloud / 100 };
    })
    .sort((a, b) => a.epochMs - b.epochMs);
}
