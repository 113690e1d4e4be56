import { BadInput } from "../../../base/bad-input.ts";
import { type Figure, figure } from "../../../base/figure.ts";
import type { TripWeather } from "../../../climate/trip-weather.ts";
import { liveWeather } from "../../../climate/weather.ts";
import { quantile } from "../../../formulas/statistics.ts";
import { indexOf } from "../../../stores/ensemble.ts";
import type { StoreId } from "../../../stores/stores.ts";
import { liveTrip, type SystemTotals } from "../live-trip.ts";
import { planTrip, type TripPlan } from "../plan-trip.ts";
import type { TripInput } from "../types.ts";
import { holdAir, holdSun, meansOf } from "./hold-weather.ts";
import type { SwingBar, SwingBy, Tornado } from "./types.ts";
import { StoreWatch } from "./watch-store.ts";

const [LOW, HIGH] = [0.1, 0.9];
/** the same shares of a standard normal */
const [LOW_Z, HIGH_Z] = [-1.2815515655446004, 1.2815515655446004];
const BARS = 5;
/** work in life-steps for each answer, so that all of them take about two seconds on an ordinary computer */
const WORK = 150_000;
const [LEAST_RUNS, MOST_RUNS] = [60, 200];
/** outside of these a chance says nothing more */
const [RARE, SURE] = [0.03, 0.97];
/** below this a bar is no news, in the unit of the answer: % or days */
const NEWS: Readonly<Record<SwingBy, number>> = { chance: 2, left: 1, when: 0.05 };

/** One thing held: a draw of the trip, or the weather. */
interface Held {
  readonly fixed?: ReadonlyMap<string, number>;
  readonly weather?: TripWeather;
}

interface Input {
  readonly input: string;
  readonly kind: string;
  readonly low: Held;
  readonly high: Held;
  readonly inputLow: Figure | null;
  readonly inputHigh: Figure | null;
}

/**
 * Which five inputs move the answer for one store most: each is held at its P10 and then at its P90 in every life,
 * all other draws the same (one at a time; what two of them do together is not in it). Without `store` the one most
 * likely in trouble, else the tightest. Throws BadInput that names the field; null where the vehicle has no store.
 */
export function findTornado(raw: TripInput, store?: StoreId): Tornado | null {
  const plan = planTrip(raw);
  const { tracked, timeline } = plan;
  if (store !== undefined && !tracked.includes(store))
    throw new BadInput([
      { path: "store", expected: `expected a store of this vehicle: ${tracked.join(", ")}` },
    ]);
  if (tracked.length === 0) return null;
  const runs = Math.min(MOST_RUNS, Math.max(LEAST_RUNS, Math.round(WORK / timeline.steps)));
  const liver = new Liver(plan, runs);
  const base = liver.live(tracked, {});
  const about = store ?? tightest(tracked, base.watch);
  const by = byOf(base.watch.of(about).troubleStep);
  const answer = (watch: StoreWatch) => answerOf(plan, watch, about, by, runs);
  const inputs = [...weatherInputs(liver, plan, runs), ...habitInputs(base.totals, about)];
  const bars = inputs.map(({ low, high, ...named }): SwingBar => {
    const [atLow, atHigh] = [low, high].map((held) => answer(liver.live([about], held).watch));
    return { ...named, low: atLow!, high: atHigh!, swing: Math.abs(atHigh!.value - atLow!.value) };
  });
  return {
    store: about,
    by,
    base: answer(base.watch),
    bars: bars
      .filter(({ swing }) => swing >= NEWS[by])
      .sort((a, b) => b.swing - a.swing || (a.input < b.input ? -1 : 1))
      .slice(0, BARS),
    runs,
    tried: inputs.length,
  };
}

/** Lives the one trip again and again through the same weather. */
class Liver {
  readonly weather: TripWeather;

  constructor(
    private readonly plan: TripPlan,
    private readonly runs: number,
  ) {
    this.weather = liveWeather(plan.timeline.days, { runs, seed: plan.input.seed, spread: true });
  }

  live(stores: readonly StoreId[], { fixed, weather = this.weather }: Held) {
    const { input, systems, timeline, people } = this.plan;
    const watch = new StoreWatch(stores, this.runs);
    const options = {
      runs: this.runs,
      people,
      seed: input.seed,
      spread: true,
      restarts: [],
      weather,
      ...(fixed === undefined ? {} : { fixed }),
    };
    const { totals } = liveTrip(input.vehicle, systems, input.trip, timeline, options, watch);
    return { watch, totals };
  }
}

const chanceOf = (troubleStep: Float64Array): number =>
  troubleStep.reduce((sum, step) => sum + (Number.isFinite(step) ? 1 : 0), 0) / troubleStep.length;

/** Most likely in trouble; among equals the one with least left in the middle life. */
function tightest(tracked: readonly StoreId[], watch: StoreWatch): StoreId {
  const worth = (store: StoreId) => {
    const { least, troubleStep } = watch.of(store);
    return chanceOf(troubleStep) + (1 - quantile([...least], 0.5)) / 1000;
  };
  return [...tracked].sort((a, b) => worth(b) - worth(a))[0]!;
}

function byOf(troubleStep: Float64Array): SwingBy {
  const chance = chanceOf(troubleStep);
  if (chance > SURE) return "when";
  return chance < RARE ? "left" : "chance";
}

function answerOf(
  { timeline }: TripPlan,
  watch: StoreWatch,
  store: StoreId,
  by: SwingBy,
  runs: number,
): Figure {
  const { least, troubleStep } = watch.of(store);
  switch (by) {
    case "chance":
      return figure(100 * chanceOf(troubleStep), "%", "trip.chance", { store, runs }, "computed");
    case "left":
      return figure(100 * quantile([...least], 0.5), "%", "-", { store, runs, share: 0.5 }, "computed");
    case "when": {
      // a life without trouble counts until the return
      const steps = [...troubleStep].map((step) => Math.min(step, timeline.steps));
      return figure(
        (quantile(steps, 0.5) * timeline.dtH) / 24,
        "d",
        "-",
        { store, runs, share: 0.5 },
        "computed",
      );
    }
  }
}

function weatherInputs({ weather }: Liver, { timeline }: TripPlan, runs: number): Input[] {
  const means = meansOf(weather, timeline);
  const air = [LOW, HIGH].map((p) => holdAir(weather, means, p));
  const sun = [LOW, HIGH].map((p) => holdSun(weather, means, p));
  const celsius = (value: number) => figure(value, "°C", "-", { runs }, "computed");
  const kwhDay = (value: number) => figure((value * 24) / 1000, "kWh/m²", "-", { runs, days: 1 }, "computed");
  return [
    {
      input: "temperature",
      kind: "weather",
      low: air[0]!,
      high: air[1]!,
      inputLow: celsius(air[0]!.value),
      inputHigh: celsius(air[1]!.value),
    },
    {
      input: "sun",
      kind: "weather",
      low: sun[0]!,
      high: sun[1]!,
      inputLow: kwhDay(sun[0]!.value),
      inputHigh: kwhDay(sun[1]!.value),
    },
  ];
}

/** What was drawn once per trip for the body and for every system that touches the store or the warmth of the cabin. */
function habitInputs(totals: readonly SystemTotals[], store: StoreId): Input[] {
  const touches = ({ drawn, given }: SystemTotals) =>
    [indexOf(store), indexOf("cabinHeat")].some((s) => drawn[s]! > 0 || given[s]! > 0);
  return totals.filter(touches).flatMap(({ id, kind, habits }) =>
    habits.map((input): Input => {
      const hold = (z: number): Held => ({ fixed: new Map([[`${id}.${input}`, z]]) });
      return { input, kind, low: hold(LOW_Z), high: hold(HIGH_Z), inputLow: null, inputHigh: null };
    }),
  );
}
