/** Numbers of one seed, the same on every machine (a linear congruential step with a 32-bit mix). */
export interface Draws {
  /** 0 up to, not with, 1 */
  share(): number;
  /** whole, both ends in */
  whole(min: number, max: number): number;
  oneOf<T>(list: readonly T[]): T;
  /** true in so many of a hundred */
  chance(percent: number): boolean;
}

export function drawsFrom(seed: number): Draws {
  let state = seed >>> 0;
  const share = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    let h = state;
    h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    return ((h ^ (h >>> 16)) >>> 0) / 4_294_967_296;
  };
  const whole = (min: number, max: number) => min + Math.floor(share() * (max - min + 1));
  return {
    share,
    whole,
    chance: (percent) => share() * 100 < percent,
    oneOf: (list) => {
      const found = list[whole(0, list.length - 1)];
      if (found === undefined) throw new RangeError("oneOf: the list is empty");
      return found;
    },
  };
}
