import { fillAll } from "../../stores/fill-all.ts";
import type { PhysicsContext, Running, SystemPhysics, Window } from "../contract.ts";
import { readTank } from "../read-level.ts";
import { createMode, createRunning, habitFactor, numberSetting, shareOfDay } from "../running.ts";
import type { CassetteToiletSpec } from "./spec.ts";

/** per person and day: 1.2 L urine and 0.12 L faeces (WHO, Guide to the development of on-site sanitation, 1992, ch. 5) */
const LITRES_PER_PERSON_DAY = 1.32;
/** flushes per person and day, and the share of visits that fall to this toilet: common practice, no source */
const FLUSHES_PER_PERSON_DAY = 5;
const SHARE_ABOARD = 0.8;
const USE: readonly Window[] = [
  { fromH: 6.5, toH: 9.5, share: 0.35 },
  { fromH: 11, toH: 17, share: 0.2 },
  { fromH: 18, toH: 23.5, share: 0.45 },
];

function startToilet(spec: CassetteToiletSpec, { n, dtH, people, setting }: PhysicsContext): Running {
  const flushed = createMode("flushed", n, spec.flushFrom === "fresh" ? ["freshWater"] : [], ["cassette"]);
  const dry = createMode("dry", n, [], ["cassette"]);
  const shareAboard = numberSetting(setting.shareAboard, SHARE_ABOARD) * people;
  const factor = habitFactor(n, "toilet", 0.2, 0.15);
  return createRunning(
    n,
    [flushed, dry],
    (view, demand) => {
      const share = view.driving ? 0 : shareOfDay(USE, view.clockH, dtH) * shareAboard;
      if (share === 0) return false;
      fillAll(demand, 1);
      const habit = factor(view);
      for (let i = 0; i < n; i++) {
        const flush = FLUSHES_PER_PERSON_DAY * spec.flushLitres * share * habit[i]!;
        const waste = LITRES_PER_PERSON_DAY * share * habit[i]!;
        if (flushed.needs.length > 0) flushed.needs[0]![i] = flush;
        flushed.gives[0]![i] = flush + waste;
        dry.gives[0]![i] = waste;
      }
      return true;
    },
    { times: USE },
  );
}

/** All cassettes aboard, L: whoever finds the one in use full changes to an empty one. */
const holdsL = ({ litres, spareCassettes }: CassetteToiletSpec) => litres * (1 + spareCassettes);

/** The panel shows the cassette in use; how many stand full beside it nobody sees, so each number counts alike. */
function readCassette(spec: CassetteToiletSpec, value: number, unit: string, sd: number | null) {
  const inUse = readTank(spec.litres, "L", value, unit, sd);
  if (inUse === null || spec.spareCassettes === 0) return inUse;
  const { litres, spareCassettes: spares } = spec;
  // of a number from 0 to the spares, all alike
  const changedSd = litres * Math.sqrt(((spares + 1) ** 2 - 1) / 12);
  return { level: inUse.level + (litres * spares) / 2, sd: Math.hypot(inUse.sd, changedSd) };
}

/** The toilet by habit; without flush water it is used dry; spare cassettes count. Settings of the hire: `shareAboard` (0.8). */
export const physics: SystemPhysics<CassetteToiletSpec> = {
  stores: (spec) => [{ store: "cassette", capacity: holdsL(spec), initial: 0 }],
  start: (spec, context) => [startToilet(spec, context)],
  read: readCassette,
};
