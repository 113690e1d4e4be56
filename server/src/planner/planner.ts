import type { Allocation, AllocationInput, RoomAnswer } from "@setfair/engine";
import { inThread } from "../threads/in-thread.ts";

/** Seats hires on vehicles for so many seconds at most. */
export type Planner = (input: AllocationInput, seconds: number) => Promise<RoomAnswer<Allocation>>;

let last: Promise<unknown> = Promise.resolve();

/** One plan at a time: a second one waits, and does not take the processor from the first and from all else. */
export const planInTurn: Planner = (input, seconds) => {
  const mine = last.then(() => inThread("allocate", input, seconds));
  last = mine.catch(() => undefined);
  return mine;
};
