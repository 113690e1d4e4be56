import { type Figure, figure } from "../../base/figure.ts";
import { shownChancePct } from "../../formulas/trip.ts";
import { indexOf, residual } from "../../stores/ensemble.ts";
import { STORE_IDS, STORES, type StoreId } from "../../stores/stores.ts";
import type { Place } from "../situation.ts";
import { listRanges } from "./list-ranges.ts";
import { type Lived, storesAtStart } from "./live-trip.ts";
import type { TripPlan } from "./plan-trip.ts";
import { listPosts, listUsualPosts } from "./posts/list-posts.ts";
import { roundBand, type StoreRecord, type TripRecorder } from "./record-trip.ts";
import { setByHand, settingsAtStop } from "./settings-at-stop.ts";
import type {
  AuditLine,
  ClimateNote,
  Draw,
  ReadingUse,
  StopForecast,
  StopLevel,
  StoreAudit,
  StoreForecast,
  TripForecast,
  Trouble,
} from "./types.ts";

const NOMINAL_V = 12;
const IN_AMPERE_HOURS: ReadonlySet<StoreId> = new Set(["battery12", "starterBattery"]);

/** Turns what was recorded into the answer that is shown. */
export function summariseTrip(
  plan: TripPlan,
  lived: Lived,
  recorder: TripRecorder,
  readings: readonly ReadingUse[],
): TripForecast {
  const { input, timeline } = plan;
  const lasts = recorder.spread.chance((i) =>
    recorder.stores.every(({ troubleH }) => troubleH[i] === Number.POSITIVE_INFINITY),
  );
  const stops = input.trip.stops.map((_, stop) => summariseStop(plan, recorder, stop));
  const start = storesAtStart(input.vehicle, plan.systems, input.trip);
  const hottestC = input.trip.stops.map((_, stop) => hottestOf(plan, recorder, stop));
  const hottest = (stop: number) => hottestC[stop]!;
  const posts = listPosts(plan, stops, hottest);
  const byHand = setByHand(plan.systems);
  return {
    runs: input.runs,
    seed: input.seed,
    stepMinutes: input.stepMinutes,
    timeZone: input.trip.timeZone,
    axis: { hours: recorder.hours, at: recorder.hours.map(timeline.localAt) },
    stores: recorder.stores.map((record) => summariseStore(plan, lived, recorder, record, start)),
    stops: stops.map((stop) => ({ ...stop, set: settingsAtStop(plan, stop, posts, byHand) })),
    ranges: listRanges(plan),
    posts,
    usualPosts: listUsualPosts(plan, stops, hottest),
    outsideC: roundBand(recorder.outside),
    cabinC: roundBand(recorder.cabin),
    lastsChance: lasts,
    lastsShownPct: shownChancePct(lasts),
    notes: summariseNotes(plan, lived),
    ...(input.audit ? { audit: auditAll(lived) } : {}),
    readings,
  };
}

/** Hottest hour of the hot tenth of the lives while at a stop, °C; null where no full hour was spent there. */
function hottestOf({ timeline }: TripPlan, { outside, hours }: TripRecorder, stop: number): number | null {
  const { arrive, leave } = timeline.stops[stop]!;
  let hottest: number | null = null;
  // points are marked at every full hour and at the end, so that the first of a stop is known
  const first = Math.min(Math.ceil(arrive * timeline.dtH), hours.length - 1);
  for (let k = first; k < hours.length && hours[k]! <= leave * timeline.dtH; k++)
    hottest = Math.max(hottest ?? Number.NEGATIVE_INFINITY, outside.p90[k]!);
  return hottest;
}

function summariseStore(
  plan: TripPlan,
  lived: Lived,
  recorder: TripRecorder,
  record: StoreRecord,
  starts: ReturnType<typeof storesAtStart>,
): StoreForecast {
  const { store } = record;
  const { unit, trouble } = STORES[store];
  const start = starts.get(store)!;
  const holders = plan.systems.filter(({ shares }) => shares.some((share) => share.store === store));
  const inputs = { systems: holders.map(({ id }) => id).join(", ") };
  const capacity = figure(
    start.capacity,
    unit,
    "-",
    { ...inputs, ...batteryInputs(holders[0]?.spec) },
    "declared",
  );
  const draws = summariseDraws(plan, lived, store);
  const perDay = usePerDay(plan, recorder, record);
  const battery = IN_AMPERE_HOURS.has(store);
  return {
    store,
    unit,
    capacity,
    ...(battery ? { capacityAh: inAmpereHours(capacity) } : {}),
    atDeparture: figure(
      start.level,
      unit,
      "-",
      { shareFull: start.capacity > 0 ? start.level / start.capacity : 0 },
      "declared",
    ),
    troubleAt: trouble === "full" ? "full" : "empty",
    band: roundBand(record.band),
    trouble: summariseTrouble(plan, recorder, record),
    stops: summariseLevels(plan, recorder, record),
    draws,
    usePerDay: perDay,
    ...(battery ? { usePerDayAh: inAmpereHours(perDay) } : {}),
    ...(plan.input.audit ? { audit: auditStore(lived, store) } : {}),
  };
}

function batteryInputs(
  spec: Readonly<Record<string, string | number | boolean>> | undefined,
): Figure["inputs"] {
  if (spec?.ratedAh === undefined || spec.usableShare === undefined) return {};
  return { ratedAh: spec.ratedAh, usableShare: spec.usableShare };
}

function inAmpereHours({ value, inputs, basis }: Figure): Figure {
  return figure(value / NOMINAL_V, "Ah", "-", { ...inputs, nominalV: NOMINAL_V }, basis);
}

function summariseTrouble(
  { timeline }: TripPlan,
  { spread }: TripRecorder,
  { troubleH }: StoreRecord,
): Trouble {
  const at = (hour: number) =>
    Number.isFinite(hour) ? timeline.localAt(Math.round(hour / timeline.dtH) * timeline.dtH) : null;
  const chance = spread.chance((i) => troubleH[i]! < Number.POSITIVE_INFINITY);
  const [p10, p50, p90, middle, first] = spread.quantiles(troubleH, [0.1, 0.5, 0.9, chance / 2, 0]);
  return {
    chance,
    p10At: at(p10!),
    p50At: at(p50!),
    p90At: at(p90!),
    // a single life in trouble has no middle of its own
    middleAt: at(Number.isFinite(middle) ? middle! : first!),
  };
}

function summariseLevels({ timeline }: TripPlan, { spread }: TripRecorder, record: StoreRecord): StopLevel[] {
  return record.arrive.map((level, index): StopLevel => {
    const home = index === timeline.stops.length;
    const hour = (home ? timeline.steps : timeline.stops[index]!.arrive) * timeline.dtH;
    const reachChance = spread.chance((i) => record.troubleH[i]! > hour);
    return {
      stop: home ? "home" : index,
      arriveP10: level.p10,
      arriveP50: level.p50,
      arriveP90: level.p90,
      leaveP50: home ? null : (record.leave[index]?.p50 ?? null),
      reachChance,
      reachShownPct: shownChancePct(reachChance),
    };
  });
}

function summariseDraws({ input, timeline }: TripPlan, { totals }: Lived, store: StoreId): Draw[] {
  const { unit, trouble } = STORES[store];
  const amounts = totals.map(({ id, kind, drawn, given }) => ({
    id,
    kind,
    amount: (trouble === "full" ? given : drawn)[indexOf(store)]! / input.runs,
  }));
  const all = amounts.reduce((sum, { amount }) => sum + amount, 0);
  const days = (timeline.steps * timeline.dtH) / 24;
  return amounts
    .filter(({ amount }) => amount > 1e-9)
    .sort((a, b) => b.amount - a.amount)
    .map(({ id, kind, amount }): Draw => {
      const shown = figure(amount, unit, "-", { runs: input.runs, days }, "computed");
      return { system: id, kind, amount: shown, share: amount / all };
    });
}

/** What returns taught of the use of this store, where they did; it is in the use already. */
function rateInput({ input }: TripPlan, store: StoreId): { readonly rateTimes?: number } {
  const rate = Object.entries(input.rates).find(([id]) => id === store)?.[1];
  return rate === undefined || rate.times === 1 ? {} : { rateTimes: rate.times };
}

/** Mean use per 24 hours while the store still serves: until the middle life is in trouble, else until the return. */
function usePerDay(
  plan: TripPlan,
  { spread, hours }: TripRecorder,
  { store, troubleH, used }: StoreRecord,
): Figure {
  const [p50] = spread.quantiles(troubleH, [0.5]);
  // at least a day, where the trip has one
  const until = Math.max(Math.min(p50!, hours.at(-1)!), Math.min(24, hours.at(-1)!));
  const at = hours.findLastIndex((hour) => hour <= until);
  const days = Math.max(hours[at]!, plan.timeline.dtH) / 24;
  const inputs = { used: used[at]!, days, ...rateInput(plan, store) };
  return figure(used[at]! / days, STORES[store].unit, "trip.meanUse", inputs, "computed");
}

/** Supplies begin anew in each step and carry nothing over, so that they have no balance of their own. */
function auditAll(lived: Lived): AuditLine[] {
  return STORE_IDS.filter(
    (store) => STORES[store].kind === "level" && lived.ensemble.present[indexOf(store)],
  ).map((store) => ({ store, unit: STORES[store].unit, ...auditStore(lived, store) }));
}

function auditStore({ ensemble }: Lived, store: StoreId): StoreAudit {
  const s = indexOf(store);
  const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / ensemble.n;
  return {
    in: mean(ensemble.into[s]!),
    out: mean(ensemble.outOf[s]!),
    change: mean(ensemble.level[s]!) - mean(ensemble.first[s]!),
    residual: residual(ensemble, s),
  };
}

function summariseStop({ input, timeline }: TripPlan, recorder: TripRecorder, stop: number): StopForecast {
  const { spread, stores } = recorder;
  const { place, arrive, leave, acts, pitch } = input.trip.stops[stop]!;
  const hour = timeline.stops[stop]!.arrive * timeline.dtH;
  const reachChance = spread.chance((i) => stores.every(({ troubleH }) => troubleH[i]! > hour));
  const risks = stores
    .map(({ store, troubleH }) => ({ store, risk: spread.chance((i) => troubleH[i]! <= hour) }))
    .sort((a, b) => b.risk - a.risk);
  const [p10, p50] = spread.quantiles(recorder.coldest[stop]!, [0.1, 0.5]);
  const nights = nightsBetween(arrive, leave, timeline.stops[stop]!, timeline.day);
  return {
    stop,
    name: place.name,
    arrive,
    leave,
    nights,
    onHookUp: acts.includes("plugIn") && pitch.postAmperes > 0,
    coldestNightC: nights > 0 && Number.isFinite(p50!) ? { p10: p10!, p50: p50! } : null,
    reachChance,
    reachShownPct: shownChancePct(reachChance),
    weakest: risks[0] !== undefined && risks[0].risk > 0 ? risks[0].store : null,
  };
}

function nightsBetween(
  _arrive: string,
  _leave: string,
  steps: { readonly arrive: number; readonly leave: number },
  day: Int16Array,
): number {
  const last = day.length - 1;
  return day[Math.min(steps.leave, last)]! - day[Math.min(steps.arrive, last)]!;
}

/** One note for each stop that gives a day its weather. */
function summariseNotes({ input, timeline }: TripPlan, { weather }: Lived): ClimateNote[] {
  const seen = new Set<number>();
  const placeOf = (stop: number) => (stop < 0 ? input.trip.depot : input.trip.stops[stop]!.place);
  return weather.flatMap((note): ClimateNote[] => {
    const stop = timeline.dayStop[note.day]!;
    if (seen.has(stop)) return [];
    seen.add(stop);
    return [
      {
        stop: stop < 0 ? "home" : stop,
        nearestStation: note.nearestStation,
        distance: figure(
          Math.round(note.distanceKm),
          "km",
          "-",
          { station: note.nearestStation },
          "computed",
        ),
        fromMemoryShare: note.fromMemoryShare,
        nearestFromMemory: note.nearestFromMemory,
        weak: note.weak,
        elevation: elevationOf(placeOf(stop)),
        forecastDays: weather.filter(({ day, given }) => given && timeline.dayStop[day] === stop).length,
      },
    ];
  });
}

/** Where the place does not say its height it is taken as level with the sea. */
function elevationOf({ name, elevationM }: Place): Figure {
  return figure(
    elevationM ?? 0,
    "m",
    "-",
    { place: name },
    elevationM === undefined ? "default" : "declared",
  );
}
