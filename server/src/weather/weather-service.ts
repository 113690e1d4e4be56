import type { SeriesPoint } from "@setfair/engine";

export interface WeatherPlace {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
}

/** Why a weather service gave nothing that can be used. */
export type WeatherFailure = "timeOut" | "unreachable" | "refused" | "unreadable" | "tooLarge";

/** The service outside did not answer as it should; nothing of ours is wrong. */
export class WeatherUnavailable extends Error {
  constructor(
    readonly failure: WeatherFailure,
    options?: ErrorOptions,
  ) {
    super(`weather service: ${failure}`, options);
    this.name = "WeatherUnavailable";
  }
}

/** An open weather service, asked for one place at a time. */
export interface WeatherService {
  /** who is to be credited, as their licence asks */
  readonly credit: string;
  /** the forecast by instants, in rising order; throws WeatherUnavailable */
  forecastAt(place: WeatherPlace): Promise<readonly SeriesPoint[]>;
}
