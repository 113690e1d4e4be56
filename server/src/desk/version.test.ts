import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { ENGINE_VERSION } from "./version.ts";

it("names the version that the package has, in frozen results as in the package", () => {
  const text = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  expect(ENGINE_VERSION).toBe((JSON.parse(text) as { version: string }).version);
});
