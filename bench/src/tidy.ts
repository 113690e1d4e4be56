import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { addDays } from "@setfair/engine";
import { startBuilt } from "./built-server.ts";
import { fillLargeDiary } from "./large-diary.ts";
import { type Line, lineOf, median } from "./line.ts";
import { signIn } from "./sign-in.ts";

const DAYS = 120;
const BETWEEN_MS = 50;

/** How long others wait while the diary of a large fleet is tidied. */
export async function benchTidy(): Promise<readonly Line[]> {
  const line = lineOf(`tidying ${DAYS} days of 60 vehicles, the built command`);
  const folder = await mkdtemp(join(tmpdir(), "setfair-bench-"));
  await fillLargeDiary(folder);
  const server = await startBuilt(folder);
  try {
    const headers = { cookie: await signIn(server.url) };
    const timed = async (path: string) => {
      const begun = performance.now();
      const answer = await fetch(`${server.url}/api${path}`, { headers });
      if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
      await answer.arrayBuffer();
      return performance.now() - begun;
    };
    const today = new Date().toISOString().slice(0, 10);
    const quiet = await timed("/hires?limit=25");
    let isDone = false;
    const tidied = timed(`/diary/tidy?from=${today}&to=${addDays(today, DAYS)}`).finally(() => {
      isDone = true;
    });
    const waits: number[] = [];
    while (!isDone) {
      waits.push(await timed("/hires?limit=25"));
      await sleep(BETWEEN_MS);
    }
    return [
      line("to the proposal", await tidied, "ms"),
      line(
        "another request meanwhile",
        median(waits),
        "ms",
        `median of ${waits.length}, first page of hires`,
      ),
      line("the longest of them", Math.max(...waits), "ms", "goal: under 500 ms"),
      line("the same request with nothing else to do", quiet, "ms"),
    ];
  } finally {
    await server.end();
    await rm(folder, { recursive: true, force: true });
  }
}
