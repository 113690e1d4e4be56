import { setTimeout as sleep } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { median } from "./line.ts";

/** Bytes. */
export interface Growth {
  /** heap and array buffers together, right after the work */
  readonly both: number;
  readonly heap: number;
  readonly buffers: number;
  readonly keptHeap: number;
  readonly keptBuffers: number;
}

const ROUNDS = 5;

/**
 * What `work` leaves on the heap and in array buffers, medians: right after it, and once garbage is collected with
 * its answer still held. V8 may collect in the middle, so the first pair is a lower bound of what was asked for.
 */
export async function growthOf(work: () => object): Promise<Growth> {
  setFlagsFromString("--expose-gc");
  const gc = runInNewContext("gc") as () => void;
  // buffers are given back a little after the collection that frees them
  const collect = async (): Promise<void> => {
    for (let k = 0; k < 3; k++) {
      gc();
      await sleep(20);
    }
  };
  const grown: Growth[] = [];
  const held: object[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    await collect();
    const before = process.memoryUsage();
    held.push(work());
    const after = process.memoryUsage();
    await collect();
    const kept = process.memoryUsage();
    const heap = after.heapUsed - before.heapUsed;
    const buffers = after.arrayBuffers - before.arrayBuffers;
    grown.push({
      both: heap + buffers,
      heap,
      buffers,
      keptHeap: kept.heapUsed - before.heapUsed,
      keptBuffers: kept.arrayBuffers - before.arrayBuffers,
    });
  }
  if (held.length !== ROUNDS) throw new Error("growthOf: expected every answer to be held");
  const middle = (of: keyof Growth) => median(grown.map((growth) => growth[of]));
  return {
    both: middle("both"),
    heap: middle("heap"),
    buffers: middle("buffers"),
    keptHeap: middle("keptHeap"),
    keptBuffers: middle("keptBuffers"),
  };
}
