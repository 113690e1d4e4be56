import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { compressFiles } from "./compress-files.ts";
import { guideWords } from "./guide-words.ts";
import { markPages } from "./precache-pages.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Three pages, each its own bundle: the desk at `/`, the yard at `/yard`, the hirer's guide at `/g/:token`.
 * Nothing is inlined, so that a content security policy without `unsafe-inline` holds.
 */
export default defineConfig({
  root: here("."),
  resolve: { conditions: ["setfair-source", "module", "browser", "development|production"] },
  plugins: [
    react(),
    guideWords(),
    VitePWA({
      strategies: "injectManifest",
      srcDir: "src",
      filename: "sw.ts",
      injectRegister: false,
      registerType: "prompt",
      manifest: false,
      injectManifest: {
        globPatterns: ["**/*.{js,css,html,woff2,svg,webmanifest}"],
        manifestTransforms: [markPages(here("dist/.vite/manifest.json"))],
        maximumFileSizeToCacheInBytes: 4_000_000,
      },
    }),
    compressFiles(here("dist")),
  ],
  build: {
    outDir: "dist",
    manifest: true,
    emptyOutDir: true,
    target: "es2023",
    sourcemap: true,
    assetsInlineLimit: 0,
    rollupOptions: {
      input: { desk: here("index.html"), yard: here("yard.html"), guide: here("guide.html") },
    },
  },
  server: { host: "127.0.0.1", port: 5170, strictPort: true, proxy: { "/api": "http://127.0.0.1:5120" } },
});
