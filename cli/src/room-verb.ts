import { BadInput, parseVehicle, type RoomAnswer, type VehicleDescription } from "@setfair/engine";
import type * as z from "zod/mini";
import { readJson } from "./read-json.ts";
import { UsageError } from "./usage-error.ts";
import type { Call, Verb } from "./verb.ts";
import { WORDS } from "./words.ts";
import { writeFindings } from "./write-findings.ts";

/** A room behind a verb: JSON in, answer out. */
export interface Room<Result> {
  readonly input: z.ZodMiniType;
  readonly output: z.ZodMiniType;
  readonly options?: Verb["options"];
  /** checks the input and answers; throws BadInput that names the field */
  readonly answer: (input: unknown, call: Call) => RoomAnswer<Result>;
  readonly table: (result: Result) => string;
}

/** Exit 1 where the room refuses, 0 where it does not. */
export function roomVerb<Result>(room: Room<Result>): Verb {
  return {
    options: { json: { type: "boolean" }, ...room.options },
    maxPositionals: 1,
    run: async (call) => {
      const file = call.positionals[0];
      if (file === undefined) throw new UsageError(WORDS.t("cli.missingFile"));
      const answer = room.answer(await readJson(call.io, file), call);
      const text =
        call.flags.json === true
          ? JSON.stringify(answer, null, 2)
          : `${room.table(answer.result)}\n\n${writeFindings(answer.findings)}`;
      call.io.out(`${text}\n`);
      return answer.findings.some((finding) => finding.severity === "refuse") ? 1 : 0;
    },
  };
}

/** Checks a vehicle description whole; paths start with `vehicle`. */
export function checkedVehicle(vehicle: unknown): VehicleDescription {
  try {
    return parseVehicle(vehicle);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    throw new BadInput(
      error.problems.map(({ path, expected }) => ({
        path: path === "" ? "vehicle" : `vehicle.${path}`,
        expected,
      })),
    );
  }
}
