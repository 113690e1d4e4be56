import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { AllocationInput } from "@setfair/engine";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPlanner } from "./open-planner.ts";

const INPUT: AllocationInput = {
  objective: "plan",
  turnaroundMinutes: 0,
  sellableMinutes: 4320,
  vehicles: [{ id: "v0", unavailable: [] }],
  hires: [{ id: "h0", from: "2026-01-01T00:00Z", to: "2026-01-02T00:00Z", vehicles: ["v0"], value: 1 }],
};

describe("a planner in a thread of its own", () => {
  let folder = "";
  const write = (name: string, code: string) => {
    const file = join(folder, name);
    writeFileSync(file, `import { parentPort, workerData } from "node:worker_threads";\n${code}`);
    return pathToFileURL(file);
  };
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "setfair-planner-"));
    writeFileSync(join(folder, "package.json"), '{"type":"module"}');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("plans here where it has no file beside it, as when run from source", async () => {
    const { result } = await openPlanner(new URL("./nothing-here.js", import.meta.url))(INPUT, 1);
    expect(result.seated).toEqual([{ hire: "h0", vehicle: "v0" }]);
  });

  it("leaves this thread free, and takes one task after the other", async () => {
    const busy = "const end = performance.now() + 300; while (performance.now() < end);";
    const log = join(folder, "log.txt");
    const file = write(
      "busy.js",
      `import { appendFileSync } from "node:fs";
       appendFileSync(${JSON.stringify(log)}, "begun "); ${busy}
       appendFileSync(${JSON.stringify(log)}, "ended "); parentPort.postMessage(workerData.input);`,
    );
    const plan = openPlanner(file);
    let turns = 0;
    const timer = setInterval(() => turns++, 5);
    await Promise.all([plan(INPUT, 1), plan(INPUT, 1)]);
    clearInterval(timer);
    // at 5 ms over at least 600 ms: had this thread been held there were none
    expect(turns).toBeGreaterThan(20);
    const { readFileSync } = await import("node:fs");
    expect(readFileSync(log, "utf8").trim()).toBe("begun ended begun ended");
  });

  it("passes on what the thread threw, or that it ended without a word, and goes on with the next", async () => {
    const plan = openPlanner(write("throws.js", 'throw new Error("no plan holds");'));
    await expect(plan(INPUT, 1)).rejects.toThrow("no plan holds");
    await expect(plan(INPUT, 1)).rejects.toThrow("no plan holds");
    await expect(openPlanner(write("silent.js", "void 0;"))(INPUT, 1)).rejects.toThrow("ended with 0");
  });
});
