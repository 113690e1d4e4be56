import type { Budget, RoomAnswer } from "@setfair/engine";
import { readJson } from "./read-json.ts";
import { UsageError } from "./usage-error.ts";
import { secondsFlag, type Verb } from "./verb.ts";
import { WORDS } from "./words.ts";
import { writeFindings } from "./write-findings.ts";

/** A planner behind a verb: it searches until its time is over and gives the best that it found. */
export interface Planner<Result> {
  /** checks the input and plans; throws BadInput that names the field */
  readonly propose: (input: unknown, budget: Budget) => RoomAnswer<Result>;
  /** the JSON that is published for it */
  readonly publish: (result: Result) => unknown;
  readonly table: (result: Result) => string;
}

const QUIET_MS = 2000;

/** Exit 1 where the planner refuses something, 0 where it does not. What takes long says so on stderr. */
export function plannerVerb<Result>(planner: Planner<Result>): Verb {
  return {
    options: { json: { type: "boolean" }, seconds: { type: "string" } },
    maxPositionals: 1,
    run: async (call) => {
      const began = performance.now();
      const elapsedMs = () => performance.now() - began;
      const file = call.positionals[0];
      if (file === undefined) throw new UsageError(WORDS.t("cli.missingFile"));
      const seconds = secondsFlag(call, "seconds", 10);
      const input = await readJson(call.io, file);
      let told = 0;
      const onProgress = (best: number, bound: number) => {
        if (elapsedMs() < told + QUIET_MS) return;
        told = elapsedMs();
        call.io.err(`${WORDS.t("cli.working.planner", { seconds: Math.round(told / 1000), best, bound })}\n`);
      };
      const answer = planner.propose(input, { seconds, elapsedMs, onProgress });
      call.io.out(
        call.flags.json === true
          ? `${JSON.stringify(planner.publish(answer.result), null, 2)}\n`
          : `${planner.table(answer.result)}\n\n${writeFindings(answer.findings)}\n`,
      );
      return answer.findings.some(({ severity }) => severity === "refuse") ? 1 : 0;
    },
  };
}
