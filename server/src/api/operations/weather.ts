import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const weatherOperations = {
  readWeatherService: operation({
    method: "GET",
    url: "/weather-service",
    tag: "trip",
    summary: "Whether this server knows an open weather service, and whether this depot uses it",
    access: may("hire.see"),
    answer: s.weatherServiceSchema,
  }),
  putWeatherService: operation({
    method: "PUT",
    url: "/weather-service",
    tag: "trip",
    summary: "Let this depot fetch forecasts, or not; off to begin with",
    access: may("terms.write"),
    body: s.putWeatherServiceSchema,
    answer: s.weatherServiceSchema,
  }),
  fetchWeather: operation({
    method: "POST",
    url: "/hires/:id/weather",
    tag: "trip",
    summary: "Fetch the forecast for the days of the trip that it covers; kept with the trip",
    access: may("hire.write"),
    params: byId,
    answer: s.hirePageSchema,
  }),
} as const;
