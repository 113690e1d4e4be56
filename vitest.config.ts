import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { conditions: ["setfair-source"] },
  // not "import": the workers take these for require too, and a CommonJS package would then be handed a module
  ssr: { resolve: { conditions: ["setfair-source", "node", "default"] } },
  test: {
    include: ["{engine,records,drawing,words,server,web,cli,demo}/{src,contract}/**/*.test.{ts,tsx}"],
    testTimeout: 30_000,
    // a store on a busy machine takes a while to be made
    hookTimeout: 60_000,
  },
});
