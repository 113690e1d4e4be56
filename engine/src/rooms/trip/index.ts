/** The light door to the trip room, for the hirer's phone: it holds no other room. */
export { shownChancePct } from "../../formulas/trip.ts";
export { forecastTrip } from "./forecast-trip.ts";
export * from "./posts/types.ts";
export { reforecastTrip } from "./reforecast-trip.ts";
export { leastLeft, type TripTelling, tellTrip } from "./tell-trip.ts";
export * from "./types.ts";
