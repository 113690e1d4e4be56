import {
  type AllocationResult,
  allocationInputSchema,
  parseAllocation,
  proposeAllocation,
  REFUSED_WHY,
} from "@setfair/engine";
import * as z from "zod/mini";
import { plannerVerb } from "../planner-verb.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

/** What goes in and comes out; these keys are a contract. */
export const allocateShapes = {
  input: allocationInputSchema,
  output: z.strictObject({
    seated: z.array(z.strictObject({ hire: z.string(), vehicle: z.string() })),
    refused: z.array(z.strictObject({ hire: z.string(), why: z.enum(REFUSED_WHY) })),
    moves: z.array(z.strictObject({ hire: z.string(), from: z.string(), to: z.string() })),
    value: z.number(),
    vehiclesUsed: z.int(),
    /** no plan of this value gets by with fewer vehicles */
    lowerBound: z.int(),
    /** no plan seats more value */
    upperBound: z.number(),
    /** fewest-vehicles: value and vehicles cannot be bettered; plan: value and moves cannot */
    proven: z.boolean(),
    milliseconds: z.int(),
  }),
} as const;

export const allocateVerb = plannerVerb<AllocationResult>({
  propose: (input, budget) => proposeAllocation(parseAllocation(input), budget),
  publish: ({ sellableGaps: _, ...published }) => published,
  table: allocateTable,
});

function allocateTable(result: AllocationResult): string {
  const from = new Map(result.moves.map((move) => [move.hire, move.from]));
  return [
    writeTable(
      [WORDS.t("cli.allocate.hire"), WORDS.t("cli.allocate.vehicle"), WORDS.t("cli.allocate.movedFrom")],
      result.seated.map(({ hire, vehicle }) => [hire, vehicle, from.get(hire) ?? WORDS.t("cli.dash")]),
    ),
    "",
    WORDS.t("cli.allocate.sum", {
      seated: result.seated.length,
      refused: result.refused.length,
      moves: result.moves.length,
      vehicles: result.vehiclesUsed,
      lowerBound: result.lowerBound,
    }),
    WORDS.t("cli.allocate.value", { value: result.value, upperBound: result.upperBound }),
    WORDS.t("cli.allocate.gaps", { count: result.sellableGaps }),
    WORDS.t(result.proven ? "cli.planner.proven" : "cli.planner.notProven"),
  ].join("\n");
}
