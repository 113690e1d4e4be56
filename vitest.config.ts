import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { conditions: ["setfair-source"] },
  ssr: { resolve: { conditions: ["setfair-source", "node", "import", "default"] } },
  test: {
    include: ["{engine,records,drawing,words,server,web,cli,demo}/{src,contract}/**/*.test.{ts,tsx}"],
    testTimeout: 30_000,
  },
});
