import { figure } from "../../../base/figure.ts";
import { breakerVerdict, mainsCurrentA } from "../../../formulas/mains.ts";
import type { MainsInlet } from "../../../systems/contract.ts";
import { HABIT_W } from "./habit-loads.ts";
import type { FittedLoad, MainsOfVehicle } from "./list-loads.ts";
import {
  type BeforeLoad,
  HABIT_LOADS,
  type HabitLoad,
  type LoadAlone,
  type LoadKept,
  type LoadName,
  type PostSize,
} from "./types.ts";

const POST_V = 230;
/** lost in the lead for other use than lighting, % (BS 7671 table 4Ab, in the formula book as cable.dropLimit) */
const DROP_LIMIT_PCT = 5;
/** less than this is not worth turning off for a kettle, W: practice */
const WORTH_SHEDDING_W = 100;

interface On {
  readonly of: FittedLoad;
  /** W; 0 while off */
  readonly stageW: number;
}

/**
 * What a post of `postA` (above 0 to 32 A) can do for the vehicle: the voltage that arrives, what
 * may stay on together, and what to turn down before something else is switched on. Null without an inlet.
 */
export function sizePost(postA: number, { inlet, loads }: MainsOfVehicle): PostSize | null {
  if (inlet === null || postA <= 0) return null;
  const powerW = inlet.powerW(postA);
  const limitA = limitOf(postA, inlet);
  const kept = keepTogether(loads, limitA);
  return {
    post: figure(postA, "A", "-", {}, "declared"),
    limit: figure(limitA, "A", "-", { postA, inletA: inlet.maxA, leadOnDrum: inlet.isOnDrum }, "computed"),
    power: figure(
      powerW,
      "W",
      "mains.power",
      { currentA: limitA, volts: POST_V - inlet.dropV(limitA) },
      "computed",
    ),
    ...voltageOf(inlet, limitA),
    isOnDrum: inlet.isOnDrum,
    kept: kept.map(keptOf),
    before: [
      ...loads
        .filter(({ load }) => load.lasts === "minutes")
        .map((one) => beforeOf(one, one.load.stagesW[0]!, kept, limitA)),
      ...HABIT_LOADS.map((kind) => beforeOf({ system: null, kind }, mostW(kind), kept, limitA)),
    ],
  };
}

/** Each load with nothing else on, on a post that was sized. */
export function listAlone({ limit }: PostSize, { loads }: MainsOfVehicle): LoadAlone[] {
  return [
    ...loads.map((one) => aloneOf(one, topW(one), topW(one), limit.value)),
    ...HABIT_LOADS.map((kind) => aloneOf({ system: null, kind }, ...HABIT_W[kind], limit.value)),
  ];
}

const topW = ({ load }: FittedLoad): number => load.stagesW.at(-1)!;
const mostW = (kind: HabitLoad): number => HABIT_W[kind][1];
const nameOf = ({ system, kind }: LoadName): LoadName => ({ system, kind });

function voltageOf(inlet: MainsInlet, limitA: number): Pick<PostSize, "volts" | "drop" | "isLow"> {
  const dropV = inlet.dropV(limitA);
  const pct = (100 * dropV) / POST_V;
  const inputs = { areaMm2: inlet.leadAreaMm2, lengthM: inlet.leadLengthM, currentA: limitA };
  return {
    volts: figure(
      POST_V - dropV,
      "V",
      "cable.voltageDrop",
      { ...inputs, volts: POST_V },
      "computed",
      "bs-7671-4f3",
    ),
    drop: figure(
      pct,
      "%",
      "cable.voltageDrop",
      { ...inputs, limitPct: DROP_LIMIT_PCT },
      "computed",
      "bs-7671-4f3",
    ),
    isLow: pct > DROP_LIMIT_PCT,
  };
}

function aloneOf(name: LoadName, leastW: number, mostW: number, ratedA: number): LoadAlone {
  const currentA = mainsCurrentA(mostW, POST_V);
  const { verdict, latestMin } = breakerVerdict(currentA, ratedA);
  const least = breakerVerdict(mainsCurrentA(leastW, POST_V), ratedA);
  const basis = name.system === null ? "default" : "declared";
  return {
    ...nameOf(name),
    power: figure(mostW, "W", "-", { leastW }, basis),
    current: figure(currentA, "A", "mains.current", { powerW: mostW, volts: POST_V }, "computed"),
    verdict,
    verdictAtLeast: least.verdict,
    latest:
      latestMin === null
        ? null
        : figure(latestMin, "min", "mains.breaker", { currentA, ratedA }, "from memory", "en-60898"),
  };
}

/** The lesser of post and inlet, A; what a lead on its drum may carry, where that is less. */
function limitOf(postA: number, { maxA, isOnDrum, powerW }: MainsInlet): number {
  return Math.min(postA, maxA, isOnDrum ? mainsCurrentA(powerW(postA), POST_V) : postA);
}

/** What may stay on for hours at a post of `postA`, and at which stage; nothing without an inlet. */
export function stagesTogether(postA: number, { inlet, loads }: MainsOfVehicle): readonly On[] {
  return inlet === null || postA <= 0 ? [] : keepTogether(loads, limitOf(postA, inlet));
}

/** In the order of the forecast's own settlement each takes the highest stage that still fits. */
function keepTogether(loads: readonly FittedLoad[], limitA: number): readonly On[] {
  let left = limitA * POST_V;
  return loads
    .filter(({ load }) => load.lasts === "hours")
    .map((of): On => {
      const stageW = of.load.stagesW.findLast((watts) => watts <= left) ?? 0;
      left -= stageW;
      return { of, stageW };
    });
}

function keptOf({ of, stageW }: On): LoadKept {
  return {
    ...nameOf(of),
    stage: figure(stageW, "W", "-", {}, "computed"),
    full: figure(topW(of), "W", "-", {}, "declared"),
    instead: of.load.instead,
  };
}

/** From the end of the same order: one stage down after the other, until the rest leaves room. */
function beforeOf(name: LoadName, powerW: number, kept: readonly On[], limitA: number): BeforeLoad {
  const mostW = limitA * POST_V;
  const fits = powerW <= mostW;
  const shed: (LoadName & { toW: number })[] = [];
  let sumW = kept.reduce((watts, { stageW }) => watts + stageW, powerW);
  for (let k = kept.length - 1; fits && k >= 0 && sumW > mostW; k--) {
    const { of, stageW } = kept[k]!;
    let toW = stageW;
    while (sumW > mostW && toW >= WORTH_SHEDDING_W) {
      const nextW = of.load.stagesW.findLast((watts) => watts < toW) ?? 0;
      sumW -= toW - nextW;
      toW = nextW;
    }
    if (toW < stageW) shed.push({ ...nameOf(of), toW });
  }
  return {
    ...nameOf(name),
    power: figure(powerW, "W", "-", {}, name.system === null ? "default" : "declared"),
    shed,
    fits,
  };
}
