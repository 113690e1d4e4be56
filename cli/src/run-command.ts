import { BadInput, nearestIds } from "@setfair/engine";
import type { Io } from "./io.ts";
import { InputError, UsageError } from "./usage-error.ts";
import { type ExitCode, readCall, type Verb } from "./verb.ts";
import { WORDS } from "./words.ts";

/** The verbs, each loaded only when it is called. */
const VERBS = {
  trip: async () => (await import("./verbs/trip.ts")).tripVerb,
  load: async () => (await import("./verbs/load.ts")).loadVerb,
  briefing: async () => (await import("./verbs/briefing.ts")).briefingVerb,
  diagnose: async () => (await import("./verbs/diagnose.ts")).diagnoseVerb,
  settle: async () => (await import("./verbs/settle.ts")).settleVerb,
  allocate: async () => (await import("./verbs/allocate.ts")).allocateVerb,
  yard: async () => (await import("./verbs/yard.ts")).yardVerb,
  formula: async () => (await import("./verbs/formula.ts")).formulaVerb,
  schema: async () => (await import("./verbs/schema.ts")).schemaVerb,
  verify: async () => (await import("./verbs/verify.ts")).verifyVerb,
  backup: async () => (await import("./verbs/backup.ts")).backupVerb,
  restore: async () => (await import("./verbs/restore.ts")).restoreVerb,
  move: async () => (await import("./verbs/move.ts")).moveVerb,
  serve: async () => (await import("./verbs/serve.ts")).serveVerb,
  password: async () => (await import("./verbs/password.ts")).passwordVerb,
  demo: async () => (await import("./verbs/demo.ts")).demoVerb,
} satisfies Record<string, () => Promise<Verb>>;
type VerbName = keyof typeof VERBS;
const NAMES = Object.keys(VERBS) as VerbName[];

/** Runs the command; never throws. */
export async function runCommand(args: readonly string[], io: Io): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === "help" || args.some((arg) => arg === "--help" || arg === "-h")) {
    io.out(help());
    return 0;
  }
  try {
    if (name === undefined) throw new UsageError(WORDS.t("cli.noVerb"));
    if (!isVerb(name))
      throw new UsageError(WORDS.t("cli.unknownVerb", { verb: name, near: nearestIds(name, NAMES, 1)[0]! }));
    const verb = await VERBS[name]();
    return await verb.run(readCall(verb, rest, io));
  } catch (error) {
    return refuse(error, name, io);
  }
}

const isVerb = (name: string): name is VerbName => Object.hasOwn(VERBS, name);

function refuse(error: unknown, verb: string | undefined, io: Io): ExitCode {
  const label = verb !== undefined && isVerb(verb) ? `setfair ${verb}` : "setfair";
  if (error instanceof BadInput) {
    io.err(`${label}: ${WORDS.t("cli.badInput", { count: error.problems.length })}\n`);
    for (const { path, expected } of error.problems)
      io.err(`  ${path === "" ? expected : `${path}: ${expected}`}\n`);
  } else if (error instanceof InputError) io.err(`${label}: ${error.message}\n`);
  else if (error instanceof UsageError) io.err(`${label}: ${error.message}\n\n${help()}`);
  else
    io.err(`${label}: ${WORDS.t("cli.broken")}\n${error instanceof Error ? error.stack : String(error)}\n`);
  return 2;
}

function help(): string {
  const lines = NAMES.map((name) => `  ${name.padEnd(10)}${WORDS.t(`cli.verb.${name}`)}`);
  return [WORDS.t("cli.usage"), WORDS.t("cli.about"), "", WORDS.t("cli.verbs"), ...lines, ""].join("\n");
}
