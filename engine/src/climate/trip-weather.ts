/** Where the trip is on one of its days. */
export interface DayPlace {
  /** degrees, north positive */
  readonly latitudeDeg: number;
  /** degrees, east positive */
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** civil date, YYYY-MM-DD */
  readonly date: string;
  /** civil time minus UTC on that day, h (BST: 1); places the sun on the clock */
  readonly utcOffsetH: number;
  /** what a forecast says of this day; it stands in for the climate */
  readonly given?: GivenDay;
}

/** One day of a weather forecast. */
export interface GivenDay {
  readonly minC: number;
  readonly maxC: number;
  /** global horizontal irradiation of the day, Wh/m²; null where the forecast does not say */
  readonly sunWhM2: number | null;
  /** whole days from its issue to the day, 0 or more: what lies further ahead is less certain */
  readonly leadDays: number;
}

export interface WeatherOptions {
  /** how many times the trip is lived, N */
  readonly runs: number;
  readonly seed: number;
  /** false: every run has the mean weather of its days (the plain deterministic case) */
  readonly spread: boolean;
}

/** On what a day's weather rests, for the result. */
export interface WeatherNote {
  readonly day: number;
  readonly nearestStation: string;
  readonly distanceKm: number;
  /** share of the weight that rests on rows from memory, 0 to 1 */
  readonly fromMemoryShare: number;
  /** true where the nearest station is more than 75 km away or half the weight rests on memory */
  readonly weak: boolean;
  /** the nearest station's own temperatures are from memory */
  readonly nearestFromMemory: boolean;
  /** the day's weather is a forecast's, not the climate's */
  readonly given: boolean;
}

export interface TripWeather {
  readonly runs: number;
  /**
   * Fills both arrays (length `runs`) for a step of `dtH` hours that begins at clock hour `clockH` (0 to 24)
   * of day `day` of the trip: outside air in °C at the middle of the step, and global horizontal irradiance
   * in W/m², the mean over the step. Allocates nothing.
   */
  fill(day: number, clockH: number, dtH: number, outsideC: Float64Array, irradianceWm2: Float64Array): void;
  readonly notes: readonly WeatherNote[];
}
