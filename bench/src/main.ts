import { mkdirSync, writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { join } from "node:path";
import { benchClimate } from "./climate.ts";
import { benchDiary } from "./diary.ts";
import { benchGuideReady } from "./guide-ready.ts";
import { benchGuideSize } from "./guide-size.ts";
import { benchHireWalk } from "./hire-walk.ts";
import { benchKernel } from "./kernel.ts";
import type { Line, Part } from "./line.ts";
import { benchPauses } from "./pauses.ts";
import { benchPhoneForecast } from "./phone-forecast.ts";
import { benchPlanners } from "./planners.ts";
import { ROOT } from "./root.ts";
import { benchServeStart } from "./serve-start.ts";
import { benchSlowPlan } from "./slow-plan.ts";
import { table } from "./table.ts";
import { benchTidy } from "./tidy.ts";
import { benchTrip } from "./trip.ts";

/** What there is to measure; `npm run bench -- trip guide` measures only these. */
const PARTS: Readonly<Record<string, Part>> = {
  trip: benchTrip,
  kernel: benchKernel,
  serve: benchServeStart,
  guide: benchGuideSize,
  ready: benchGuideReady,
  phone: benchPhoneForecast,
  plan: benchSlowPlan,
  hires: benchHireWalk,
  climate: benchClimate,
  planners: benchPlanners,
  tidy: benchTidy,
  pauses: benchPauses,
  diary: benchDiary,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in PARTS));
if (unknown.length > 0) {
  console.error(`bench: no part ${unknown.join(", ")}; expected ${Object.keys(PARTS).join(", ")}`);
  process.exit(2);
}

const lines: Line[] = [];
for (const [name, part] of Object.entries(PARTS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.error(`bench: ${name} …`);
  try {
    lines.push(...(await part()));
  } catch (error) {
    lines.push({ part: name, what: "failed", value: null, unit: "", note: String(error) });
    process.exitCode = 1;
  }
}

const machine = {
  cpu: cpus()[0]?.model ?? "unknown",
  cores: cpus().length,
  node: process.version,
  load: loadavg(),
};
const out = join(ROOT, "bench/out");
mkdirSync(out, { recursive: true });
writeFileSync(
  join(out, "latest.json"),
  `${JSON.stringify({ at: new Date().toISOString(), machine, lines }, null, 2)}\n`,
);
console.log(table(lines));
console.log(
  `\n${machine.cores} cores, Node ${machine.node}, load ${machine.load.map((n) => n.toFixed(1)).join(" ")}; times are medians and move with what else the machine does`,
);
