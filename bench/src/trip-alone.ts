import { once } from "node:events";
import type { TripInput } from "@setfair/engine";
import { measure } from "./measure.ts";
import { growthOf } from "./memory.ts";
import { ROOT } from "./root.ts";

/** What is lived in a process of its own: many lives of a fortnight, one of four weeks, and a plan of those. */
export interface TripWork {
  readonly many: TripInput;
  readonly one: TripInput;
  readonly plan: TripInput;
}
export interface TripTimes {
  readonly manyNs: number;
  readonly oneNs: number;
  readonly planNs: number;
  readonly growth: Awaited<ReturnType<typeof growthOf>>;
}

const [{ many, one, plan }] = (await once(process, "message")) as [TripWork];
// as it is built and served: what runs sources from their files wraps every function, and reads slower
const { forecastTrip, planStops }: typeof import("@setfair/engine") = await import(
  `${ROOT}engine/dist/index.js`
);
const [manyNs] = (await measure({ many: () => forecastTrip(many) })) as [number];
// one life takes so little that it is over before the machine has made its code fast, and a median of half a second wanders
const [oneNs] = (await measure({ one: () => forecastTrip(one) }, 400, 400)) as [number];
// after the forecasts, so that it finds them warm
const [planNs] = (await measure({ plan: () => planStops(plan) }, 3)) as [number];
const growth = await growthOf(() => forecastTrip(many));
process.send?.({ manyNs, oneNs, planNs, growth } satisfies TripTimes);
process.disconnect();
