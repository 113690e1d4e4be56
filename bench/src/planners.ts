import { parseAllocation, parseSchedule, proposeAllocation, proposeSchedule } from "@setfair/engine";
import { type Line, lineOf } from "./line.ts";

const HIRES = 600;
const VEHICLES = 72;
/** so many are needed, and are enough */
const OWN = 60;
const JOBS = 60;

/** A small generator of whole numbers, the same each time (Lehmer, modulus 2^31 − 1, multiplier 48271). */
function numbersFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

const instant = (hour: number) =>
  `2026-${String(4 + Math.floor(hour / 672)).padStart(2, "0")}-${String(1 + (Math.floor(hour / 24) % 28)).padStart(2, "0")}T${String(hour % 24).padStart(2, "0")}:00Z`;

/** A packed season: the hires of sixty vehicles lie end to end, and each may go on its own vehicle and some others. */
function season() {
  const next = numbersFrom(7);
  const ends = new Array<number>(OWN).fill(0).map(() => next(72));
  const hires = Array.from({ length: HIRES }, (_, k) => {
    const own = k % OWN;
    const from = ends[own]!;
    const to = from + 24 * (3 + next(8));
    ends[own] = to;
    const others = Array.from({ length: 20 }, () => next(VEHICLES));
    return {
      id: `h${k}`,
      from: instant(from),
      to: instant(to),
      vehicles: [...new Set([own, ...others])].map((v) => `v${v}`),
    };
  });
  const vehicles = Array.from({ length: VEHICLES }, (_, k) => ({ id: `v${k}` }));
  return parseAllocation({ objective: "fewest-vehicles", vehicles, hires });
}

function morning() {
  const next = numbersFrom(11);
  const jobs = Array.from({ length: JOBS }, (_, k) => ({
    id: `j${k}`,
    minutes: 10 * (1 + next(9)),
    needs: { hands: 1 + next(3), ...(next(3) === 0 ? { bay: 1 } : {}) },
    after: k >= 3 ? [`j${k - 1 - next(3)}`].filter(() => next(2) === 0) : [],
  }));
  const resources = [
    { id: "hands", capacity: 6 },
    { id: "bay", capacity: 1 },
  ];
  return parseSchedule({ objective: "earliest-finish", resources, jobs });
}

/** Both planners on invented work of a size that a large depot has: how far from the bound after three seconds. */
export async function benchPlanners(): Promise<readonly Line[]> {
  const clock = () => {
    const began = performance.now();
    return { seconds: 3, elapsedMs: () => performance.now() - began };
  };
  const plan = proposeAllocation(season(), clock()).result;
  const day = proposeSchedule(morning(), clock()).result;
  const allocate = lineOf(`allocate, ${HIRES} hires on ${VEHICLES} vehicles`);
  const yard = lineOf(`yard, ${JOBS} jobs`);
  return [
    allocate("vehicles used over the lower bound", plan.vehiclesUsed / plan.lowerBound, "ratio"),
    allocate("refused", plan.refused.length, "hires"),
    allocate("time", plan.milliseconds, "ms", "at most 3 s"),
    yard("finish over the lower bound", day.finish / day.lowerBound, "ratio"),
    yard("time", day.milliseconds, "ms", "at most 3 s"),
  ];
}
