import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startBuilt } from "./built-server.ts";
import { type Line, lineOf, median } from "./line.ts";

const STARTS = 5;

/** Milliseconds from the command to the first answer. */
async function startOnce(dataFolder: string): Promise<number> {
  const { readyMs, end } = await startBuilt(dataFolder);
  await end();
  return readyMs;
}

/** From the command to the first answer: on an empty folder, and again on the folder it made. */
export async function benchServeStart(): Promise<readonly Line[]> {
  const line = lineOf("time to serve, from the built command to the first answer");
  const [first, again]: [number[], number[]] = [[], []];
  for (let k = 0; k < STARTS; k++) {
    const folder = await mkdtemp(join(tmpdir(), "setfair-bench-"));
    try {
      first.push(await startOnce(folder));
      again.push(await startOnce(folder));
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  }
  return [
    line(
      "empty data folder",
      median(first),
      "ms",
      `median of ${STARTS}; makes the tables and loads the invented firm`,
    ),
    line("the same folder again", median(again), "ms", `median of ${STARTS}`),
    line("empty over again", median(first) / median(again), "ratio"),
  ];
}
