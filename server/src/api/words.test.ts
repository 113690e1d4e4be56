import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { GATES } from "@setfair/engine";
import { createWords } from "@setfair/words";
import { expect, it } from "vitest";
import { REFUSAL_CODES } from "./refusal.ts";

const words = createWords();
const handlers = join(import.meta.dirname, "handlers");
const source = [
  ...readdirSync(handlers).map((name) => readFileSync(join(handlers, name), "utf8")),
  readFileSync(join(import.meta.dirname, "../desk/waits.ts"), "utf8"),
].join("\n");
const found = (pattern: RegExp) => [...new Set([...source.matchAll(pattern)].map((match) => match[1] ?? ""))];

it("every refusal, every wait and every act in the history has its words", () => {
  const acts = found(/"((?:hire|vehicle|terms)\.[a-zA-Z]+)"/g);
  const waits = [...found(/wait\("([a-zA-Z]+)"/g), ...GATES.map((gate) => `gate.${gate}`)];
  expect(acts.length).toBeGreaterThan(15);
  expect(waits.length).toBeGreaterThan(20);
  const ids = [
    ...REFUSAL_CODES.map((code) => `error.${code}`),
    ...acts.map((act) => `history.${act}`),
    ...waits.map((wait) => `waits.${wait}`),
    ...["lost", "cancelled", "noShow"].map((as) => `history.hire.${as}`),
  ];
  expect(ids.filter((id) => !words.has(id))).toEqual([]);
});
