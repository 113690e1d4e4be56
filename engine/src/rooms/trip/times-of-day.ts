import type { CompiledRunning } from "../../stores/settle.ts";
import type { Window } from "../../systems/contract.ts";
import type { Timeline } from "./timeline.ts";

/** Bit of what may be wanted at any time of the day; every step has it. */
const EVER = 1;
/** as many different times of the day as fit beside it into one number; what comes after them is asked at every step */
const MOST = 30;
/** lengths of a step by which it is asked before and after its times: so it hears of their end once */
const AROUND = 1.5;

/**
 * At which times of the day each system may want anything at all: most of them stand still most of the day, and are
 * then not asked. Times are counted as bits, so that a step and a system are held against each other in one sum.
 */
export class TimesOfDay {
  private readonly known: (readonly Window[])[] = [];

  constructor(all: readonly CompiledRunning[]) {
    for (const { running } of all) {
      const { times } = running;
      if (times !== undefined && this.known.length < MOST && !this.known.includes(times))
        this.known.push(times);
    }
  }

  /** The bit of a system's times. */
  bitOf({ running: { times } }: CompiledRunning): number {
    const at = times === undefined ? -1 : this.known.indexOf(times);
    return at < 0 ? EVER : EVER << (at + 1);
  }

  /** The bits of every step of a trip. */
  bySteps({ steps, clockH, dtH }: Timeline): Int32Array {
    const bits = new Int32Array(steps);
    const perDay = Math.round(24 / dtH);
    for (let k = 0; k < steps; k++) {
      const isAsYesterday = k >= perDay && clockH[k] === clockH[k - perDay];
      bits[k] = isAsYesterday ? bits[k - perDay]! : this.at(clockH[k]! + dtH / 2, AROUND * dtH);
    }
    return bits;
  }

  private at(middleH: number, aroundH: number): number {
    const isNear = ({ fromH, toH }: Window) => middleH >= fromH - aroundH && middleH <= toH + aroundH;
    return this.known.reduce(
      (bits, times, k) => (times.some(isNear) ? bits | (EVER << (k + 1)) : bits),
      EVER,
    );
  }
}
