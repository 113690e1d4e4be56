import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Line, lineOf } from "./line.ts";

const LIVES = 500;
const STEPS = 14 * 96;
const REPEATS = 20;
const TOLERANCE = 1e-9;

interface Levels {
  readonly battery: Float64Array;
  readonly gas: Float64Array;
  readonly heat: Float64Array;
}

/** The same sums as `live` in kernel.c, in the same order, over typed arrays. */
function liveKernel(n: number, steps: number, { battery, gas, heat }: Levels, habit: Float64Array): void {
  const [dt, capacity, conductance, full, usable] = [0.25, 250, 60, 4000, 570];
  const decay = Math.exp((-conductance * dt) / capacity);
  battery.fill(usable);
  gas.fill(12);
  heat.fill(capacity * 55);
  for (let step = 0; step < steps; step++) {
    const clock = (step % 96) * dt;
    const outside = 3 - 5 * Math.cos(((clock - 3) * Math.PI) / 12);
    const target = clock >= 7 && clock < 23 ? 19 : 14;
    const sun = clock > 9 && clock < 16 ? 30 : 0;
    const needGas = (full * dt) / (12.87 * 1000 * 0.9);
    const needFan = 18 * dt;
    for (let i = 0; i < n; i++) {
      const cabin = heat[i]! / capacity - 40;
      let charge = battery[i]!;
      charge += Math.min(sun * dt, usable - charge);
      charge -= Math.min((clock >= 17 ? 15 : 2) * habit[i]! * dt, charge);
      const asked = ((target - outside - (cabin - outside) * decay) / (1 - decay)) * conductance * dt;
      let activity = Math.min(Math.max(asked, 0) / (full * dt), 1);
      if (activity * needGas > gas[i]!) activity = gas[i]! / needGas;
      if (activity * needFan > charge) activity = charge / needFan;
      gas[i] = gas[i]! - activity * needGas;
      battery[i] = charge - activity * needFan;
      const gain = activity * full * dt + 100 * dt;
      const settled = outside + gain / (dt * conductance);
      heat[i] = (settled + (cabin - settled) * decay + 40) * capacity;
    }
  }
}

function runHere(): { seconds: number; levels: Levels } {
  const array = () => new Float64Array(LIVES);
  const levels = { battery: array(), gas: array(), heat: array() };
  const habit = array().map((_, i) => 0.5 + i / LIVES);
  let seconds = Number.POSITIVE_INFINITY;
  for (let r = 0; r < REPEATS; r++) {
    const from = performance.now();
    liveKernel(LIVES, STEPS, levels, habit);
    seconds = Math.min(seconds, (performance.now() - from) / 1000);
  }
  return { seconds, levels };
}

function findCompiler(): string | null {
  return (
    ["cc", "gcc", "clang"].find((name) => spawnSync(name, ["--version"], { stdio: "ignore" }).status === 0) ??
    null
  );
}

function runInC(compiler: string): { seconds: number; rows: readonly (readonly number[])[] } {
  const folder = mkdtempSync(join(tmpdir(), "kernel-"));
  try {
    const binary = join(folder, "kernel");
    const source = fileURLToPath(new URL("../kernel.c", import.meta.url));
    execFileSync(compiler, ["-O3", "-o", binary, source, "-lm"]);
    const [first, ...lines] = execFileSync(binary, [LIVES, STEPS, REPEATS].map(String), { encoding: "utf8" })
      .trim()
      .split("\n");
    return { seconds: Number(first), rows: lines.map((line) => line.split(" ").map(Number)) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function worstDifference(levels: Levels, rows: readonly (readonly number[])[]): number {
  let worst = 0;
  rows.forEach((row, i) => {
    [levels.battery, levels.gas, levels.heat].forEach((values, k) => {
      const here = values[i]!;
      worst = Math.max(worst, Math.abs(here - row[k]!) / Math.max(1, Math.abs(here)));
    });
  });
  return worst;
}

/**
 * The inner loop of the forecast cut down to three stores, against the same in C at -O3. Throws where the two
 * differ by more than 1e-9; without a C compiler only our own time is given, and said so.
 */
export async function benchKernel(): Promise<readonly Line[]> {
  const line = lineOf("three-store kernel (battery, gas, cabin heat)");
  const here = runHere();
  const perStep = (seconds: number) => (seconds * 1e9) / (LIVES * STEPS);
  const own = line("typed arrays, per vehicle-step", perStep(here.seconds), "ns", `best of ${REPEATS}`);
  const compiler = findCompiler();
  if (compiler === null)
    return [own, line("the same in C", null, "ns", "skipped: no C compiler found (cc, gcc, clang)")];
  const c = runInC(compiler);
  const apart = worstDifference(here.levels, c.rows);
  if (c.rows.length !== LIVES || !(apart <= TOLERANCE)) {
    throw new Error(`kernel: TypeScript and C differ by ${apart} (at most ${TOLERANCE} expected)`);
  }
  return [
    own,
    line("the same in C, per vehicle-step", perStep(c.seconds), "ns", `${compiler} -O3, best of ${REPEATS}`),
    line("TypeScript over C", here.seconds / c.seconds, "ratio", "time"),
    line("largest difference between the two", apart, "relative", "at most 1e-9"),
  ];
}
