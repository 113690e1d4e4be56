// `npm start`: installs what is missing, builds what is stale, then serves.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build, isBuilt } from "./build.mjs";
import { ensureInstalled, root } from "./lib.mjs";

ensureInstalled();
if (!isBuilt()) {
  console.log("Building …");
  await build();
}
process.argv.splice(2, process.argv.length, "serve", ...process.argv.slice(2));
await import(pathToFileURL(join(root, "cli", "dist", "setfair.js")).href);
