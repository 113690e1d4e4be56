import { type Allocation, type AllocationInput, proposeAllocation, type RoomAnswer } from "@setfair/engine";

/** Seats hires on vehicles for so many seconds at most. */
export type Planner = (input: AllocationInput, seconds: number) => Promise<RoomAnswer<Allocation>>;

/** The engine's own planner in this very thread: nothing else is answered meanwhile. */
export function planHere(input: AllocationInput, seconds: number): RoomAnswer<Allocation> {
  const begun = performance.now();
  return proposeAllocation(input, { seconds, elapsedMs: () => performance.now() - begun });
}
