import * as z from "zod/mini";
import { UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { allocateShapes } from "./allocate.ts";
import { briefingRoom } from "./briefing.ts";
import { diagnoseRoom } from "./diagnose.ts";
import { loadRoom } from "./load.ts";
import { settleRoom } from "./settle.ts";
import { tripRoom } from "./trip.ts";
import { yardShapes } from "./yard.ts";

/** The verbs whose JSON is published. */
export const ROOMS = {
  trip: tripRoom,
  load: loadRoom,
  briefing: briefingRoom,
  diagnose: diagnoseRoom,
  settle: settleRoom,
  allocate: allocateShapes,
  yard: yardShapes,
} as const;

/** `setfair schema <verb>`: JSON Schema (draft 2020-12) of what goes in and what comes out. */
export const schemaVerb: Verb = {
  options: { json: { type: "boolean" } },
  maxPositionals: 1,
  run: async ({ io, positionals }) => {
    const verbs = Object.keys(ROOMS).join(", ");
    const name = positionals[0];
    if (name === undefined) {
      io.out(`${WORDS.t("cli.schema.list", { verbs })}\n`);
      return 0;
    }
    if (!Object.hasOwn(ROOMS, name)) throw new UsageError(WORDS.t("cli.missingFormulaVerb", { verbs }));
    const { input, output } = ROOMS[name as keyof typeof ROOMS];
    const schemas = { input: z.toJSONSchema(input, { io: "input" }), output: z.toJSONSchema(output) };
    io.out(`${JSON.stringify(schemas, null, 2)}\n`);
    return 0;
  },
};
