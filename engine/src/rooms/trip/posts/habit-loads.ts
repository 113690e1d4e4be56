import type { HabitLoad } from "./types.ts";

/** Power of what people plug in, W, from the least to the most that is usual: common practice, no source. */
export const HABIT_W: Readonly<Record<HabitLoad, readonly [leastW: number, mostW: number]>> = {
  kettle: [2200, 3000],
  /** made for travel */
  smallKettle: [750, 1000],
  hairDryer: [1200, 2000],
  toaster: [700, 1000],
};
