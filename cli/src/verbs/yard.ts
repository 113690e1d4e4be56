import {
  parseSchedule,
  proposeSchedule,
  type ScheduleResult,
  scheduleInputSchema,
  UNPLACED_WHY,
} from "@setfair/engine";
import * as z from "zod/mini";
import { plannerVerb } from "../planner-verb.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

/** What goes in and comes out; these keys are a contract. */
export const yardShapes = {
  input: scheduleInputSchema,
  output: z.strictObject({
    schedule: z.array(z.strictObject({ job: z.string(), start: z.int(), end: z.int() })),
    finish: z.int(),
    /** no schedule finishes sooner */
    lowerBound: z.int(),
    late: z.array(z.strictObject({ job: z.string(), dueBy: z.int(), minutes: z.int() })),
    /** earliest-finish: the finish cannot be bettered; day: neither lateness nor overtime can */
    proven: z.boolean(),
    milliseconds: z.int(),
    /** with spreads: how likely each is in time, when the jobs are done in this order */
    chances: z.optional(z.array(z.strictObject({ job: z.string(), dueBy: z.int(), chance: z.number() }))),
    /** only where the shifts hold no room for some */
    unplaced: z.optional(z.array(z.strictObject({ job: z.string(), why: z.enum(UNPLACED_WHY) }))),
  }),
} as const;

export const yardVerb = plannerVerb<ScheduleResult>({
  propose: (input, budget) => proposeSchedule(parseSchedule(input), budget),
  publish: ({ weightedLateness: _, overtimeUnitMinutes: __, unplaced, ...published }) =>
    unplaced.length === 0 ? published : { ...published, unplaced },
  table: yardTable,
});

function yardTable(result: ScheduleResult): string {
  const late = new Map(result.late.map(({ job, minutes }) => [job, minutes]));
  const chances = new Map(result.chances?.map(({ job, chance }) => [job, chance]));
  const dash = WORDS.t("cli.dash");
  return [
    writeTable(
      (["job", "start", "end", "late", "chance"] as const).map((name) => WORDS.t(`cli.yard.${name}`)),
      result.schedule.map(({ job, start, end }) => [
        job,
        clock(start),
        clock(end),
        late.has(job) ? WORDS.figureText({ value: late.get(job)!, unit: "min" }) : dash,
        chances.has(job) ? WORDS.t("cli.outOf100", { pct: Math.round(chances.get(job)! * 100) }) : dash,
      ]),
      { right: [1, 2, 3, 4] },
    ),
    "",
    WORDS.t("cli.yard.sum", { finish: clock(result.finish), lowerBound: clock(result.lowerBound) }),
    WORDS.t("cli.yard.lateness", {
      lateness: result.weightedLateness,
      overtime: result.overtimeUnitMinutes,
    }),
    WORDS.t(result.proven ? "cli.planner.proven" : "cli.planner.notProven"),
  ].join("\n");
}

/** Hours and minutes from the opening. */
const clock = (minutes: number) =>
  `${Math.floor(minutes / 60)}:${String(Math.round(minutes % 60)).padStart(2, "0")}`;
