import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { createWords } from "./english.ts";

const words = createWords();
const systems = join(import.meta.dirname, "../../engine/src/systems");

it("whatever is drawn once per trip has a name for the chart of what moves the answer", () => {
  const sources = readdirSync(systems, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith("physics.ts"))
    .map((name) => readFileSync(join(systems, name), "utf8"))
    .join("\n");
  const drawn = [...sources.matchAll(/(?:habitFactor\(n, |tripNormal\()"([A-Za-z]+)"/g)].map(
    (match) => match[1]!,
  );
  expect(drawn.length).toBeGreaterThan(8);
  const nameless = [...new Set(drawn), "temperature", "sun", "loss"].filter(
    (name) => !words.has(`why.input.${name}`),
  );
  expect(nameless).toEqual([]);
});
