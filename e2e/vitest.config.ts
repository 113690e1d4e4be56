import { defineConfig } from "vitest/config";
import root from "../vitest.config.ts";

export default defineConfig({
  ...root,
  test: {
    include: ["e2e/src/**/*.test.ts"],
    testTimeout: 240_000,
    hookTimeout: 120_000,
    fileParallelism: false,
    // a step of a hire needs the one before it
    bail: 1,
  },
});
