import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { BadInput } from "@setfair/engine";
import { createWords } from "@setfair/words";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { renderPdf } from "../papers/render-pdf.ts";
import { inThread, openThreads } from "./in-thread.ts";

const PAPER = { title: "Quote", from: "Invented Hire", reference: "M-1", content: [] };
const ALLOCATION = {
  objective: "plan",
  turnaroundMinutes: 0,
  sellableMinutes: 4320,
  vehicles: [{ id: "v0", unavailable: [] }],
  hires: [{ id: "h0", from: "2026-01-01T00:00Z", to: "2026-01-02T00:00Z", vehicles: ["v0"], value: 1 }],
} as const;
const allocation = (n = 1) => ({
  ...ALLOCATION,
  vehicles: Array.from({ length: n }, (_, k) => ({ id: `v${k}`, unavailable: [] })),
  hires: Array.from({ length: n * 3 }, (_, k) => ({
    id: `h${k}`,
    from: `2026-01-${String(1 + (k % 20)).padStart(2, "0")}T00:00Z`,
    to: `2026-01-${String(4 + (k % 20)).padStart(2, "0")}T00:00Z`,
    vehicles: Array.from({ length: n }, (_, v) => `v${v}`),
    value: 1,
  })),
});

/** The longest this thread was held while `work` ran, milliseconds. */
async function longestHold(work: () => Promise<unknown>): Promise<number> {
  let last = performance.now();
  let longest = 0;
  const timer = setInterval(() => {
    const now = performance.now();
    longest = Math.max(longest, now - last);
    last = now;
  }, 5);
  await work().finally(() => clearInterval(timer));
  return Math.max(longest, performance.now() - last);
}

describe.each([
  ["in threads of its own", true],
  ["in this thread, where none are open", false],
])("long work %s", (_name, isOpen) => {
  let close = async () => {};
  beforeEach(async () => {
    if (isOpen) close = await openThreads();
  });
  afterEach(() => close());

  it("gives what the task gives", async () => {
    const { result } = await inThread("allocate", allocation(), 1);
    expect(result.seated).toEqual([{ hire: "h0", vehicle: "v0" }]);
  });

  it("throws what is wrong with the input as bad input that names its field", async () => {
    const wrong = inThread("allocate", { ...allocation(), turnaroundMinutes: -5 }, 1);
    await expect(wrong).rejects.toBeInstanceOf(BadInput);
    await expect(wrong).rejects.toMatchObject({ problems: [{ path: "turnaroundMinutes" }] });
  });

  it("throws any other failure with its message, and goes on with the next", async () => {
    // no picture at all
    const broken = { ...PAPER, content: [{ image: "data:image/png;base64,AAAA" }] };
    await expect(renderPdf(broken, createWords())).rejects.toThrow(/image/i);
    expect((await renderPdf(PAPER, createWords())).subarray(0, 5).toString()).toBe("%PDF-");
  });
});

describe("threads", () => {
  it("leave this one free while they work", async () => {
    const close = await openThreads();
    try {
      await inThread("allocate", allocation(), 0.1);
      const begun = performance.now();
      const held = await longestHold(() =>
        Promise.all([inThread("allocate", allocation(12), 1), inThread("allocate", allocation(12), 1)]),
      );
      expect(performance.now() - begun).toBeGreaterThan(800);
      // worked here, each would have held it for its whole second
      expect(held).toBeLessThan(400);
    } finally {
      await close();
    }
  });

  it("are shared by all who opened them, and end with the last, so that the process ends by itself", async () => {
    const script = `
      const { inThread, openThreads } = await import("./src/threads/in-thread.ts");
      const [first, second] = [await openThreads(), await openThreads()];
      await first(); await first();
      const { result } = await inThread("allocate", ${JSON.stringify(allocation())}, 1);
      await second();
      console.log(result.seated.length);`;
    const args = ["--conditions=setfair-source", "--import", "tsx", "--input-type=module", "-e", script];
    const cwd = new URL("../..", import.meta.url);
    const { stdout } = await promisify(execFile)(process.execPath, args, { cwd, timeout: 25_000 });
    expect(stdout.trim()).toBe("1");
  });
});
