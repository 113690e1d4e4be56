import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { conditions: ["setfair-source"] },
  ssr: { resolve: { conditions: ["setfair-source", "node", "import", "default"] } },
  test: {
    include: ["e2e/src/**/*.test.ts"],
    testTimeout: 240_000,
    hookTimeout: 120_000,
    fileParallelism: false,
  },
});
