export { planStops } from "./plan-stops.ts";
export * from "./types.ts";
