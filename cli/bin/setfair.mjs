#!/usr/bin/env node
import { existsSync } from "node:fs";

const built = new URL("../dist/setfair.js", import.meta.url);
if (existsSync(built)) {
  await import(built.href);
} else {
  console.error("setfair: not built yet; run npm run build first");
  process.exitCode = 2;
}
