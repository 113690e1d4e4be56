import type { TripWeather } from "../../../climate/trip-weather.ts";
import { quantile } from "../../../formulas/statistics.ts";
import type { Timeline } from "../timeline.ts";

/** Means over the trip, one for each life: air in °C, radiation in W/m². */
export interface WeatherMeans {
  readonly airC: Float64Array;
  readonly sunWm2: Float64Array;
}

/** How the weather of each life was on the mean of the trip. */
export function meansOf(weather: TripWeather, { steps, day, clockH, dtH }: Timeline): WeatherMeans {
  const { runs } = weather;
  const [airC, sunWm2] = [new Float64Array(runs), new Float64Array(runs)];
  const [air, sun] = [new Float64Array(runs), new Float64Array(runs)];
  for (let step = 0; step < steps; step++) {
    weather.fill(day[step]!, clockH[step]!, dtH, air, sun);
    for (let i = 0; i < runs; i++) {
      airC[i] = airC[i]! + air[i]! / steps;
      sunWm2[i] = sunWm2[i]! + sun[i]! / steps;
    }
  }
  return { airC, sunWm2 };
}

/** The same weather with every life's mean temperature of the trip at the quantile of all; days keep their ups and downs. */
export function holdAir(weather: TripWeather, { airC }: WeatherMeans, p: number) {
  const heldC = quantile([...airC], p);
  const shift = airC.map((mean) => heldC - mean);
  const held: TripWeather = {
    ...weather,
    fill: (day, clockH, dtH, outsideC, irradianceWm2) => {
      weather.fill(day, clockH, dtH, outsideC, irradianceWm2);
      for (let i = 0; i < shift.length; i++) outsideC[i] = outsideC[i]! + shift[i]!;
    },
  };
  return { weather: held, value: heldC };
}

/** Likewise the radiation, as a share of each life's own. */
export function holdSun(weather: TripWeather, { sunWm2 }: WeatherMeans, p: number) {
  const heldWm2 = quantile([...sunWm2], p);
  const factor = sunWm2.map((mean) => (mean > 0 ? heldWm2 / mean : 1));
  const held: TripWeather = {
    ...weather,
    fill: (day, clockH, dtH, outsideC, irradianceWm2) => {
      weather.fill(day, clockH, dtH, outsideC, irradianceWm2);
      for (let i = 0; i < factor.length; i++) irradianceWm2[i] = irradianceWm2[i]! * factor[i]!;
    },
  };
  return { weather: held, value: heldWm2 };
}
