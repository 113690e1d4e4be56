import { GATES } from "@setfair/engine";
import * as z from "zod";
import { named } from "./named.ts";

/** Ids made by us or by a device; opaque to a client. */
export const idSchema = z.string().min(1).max(80);
export const dateSchema = z.iso.date();
/** civil time in the depot's zone, `YYYY-MM-DDTHH:MM` */
export const localSchema = z
  .string()
  .regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d$/,
    "expected a civil time YYYY-MM-DDTHH:MM",
  )
  .refine(
    (text) =>
      !Number.isNaN(Date.parse(`${text}:00Z`)) &&
      text.slice(8, 10) === new Date(`${text}:00Z`).toISOString().slice(8, 10),
    "expected a day that exists",
  );
export const instantSchema = z.string().min(1).max(40);
export const hashSchema = z.string().regex(/^[0-9a-f]{64}$/, "expected 64 lower-case hexadecimal digits");
export const textSchema = (max: number) => z.string().trim().min(1).max(max);

/** what distances are read and written in; the API itself carries km */
export const distancesSchema = z.enum(["km", "mi"]);

/** Room results travel as they are; their types are the engine's own (`@setfair/engine`). */
export const roomResultSchema = z.unknown();

export const moneySchema = named(
  "Money",
  z.object({ currency: z.enum(["GBP", "EUR", "CHF", "NOK"]), pence: z.int() }),
);

export const figureSchema = named(
  "Figure",
  z.object({
    value: z.number(),
    unit: z.string(),
    formula: z.string(),
    inputs: z.record(z.string(), z.union([z.number(), z.string(), z.boolean(), z.null()])),
    basis: z.enum(["measured", "declared", "default", "from memory", "computed"]),
    source: z.string().optional(),
  }),
);

export const factsSchema = z.record(z.string(), z.union([figureSchema, z.string(), z.number()]));

export const gateSchema = z.enum(GATES);
export const basisSchema = z.enum(["law", "safety", "cover", "policy", "physics"]);

export const findingSchema = named(
  "Finding",
  z.object({
    /** text under `finding.<code>` */
    code: z.string(),
    gate: gateSchema,
    severity: z.enum(["refuse", "refer", "unchecked", "condition", "note"]),
    basis: basisSchema,
    facts: factsSchema,
    sources: z.array(z.string()),
    /** texts under `mend.<code>` */
    mends: z.array(z.object({ code: z.string(), facts: factsSchema })),
    about: z.string().optional(),
  }),
);

export const errorSchema = named(
  "Error",
  z.object({
    error: z.object({
      /** text under `error.<code>` */
      code: z.string(),
      message: z.string(),
      problems: z.array(z.object({ path: z.string(), expected: z.string() })),
      /** why it was refused, where a room refused it */
      findings: z.array(findingSchema).optional(),
    }),
  }),
);

export const doneSchema = named("Done", z.object({ done: z.literal(true) }));

/** Every answer that an operation may give beside its own. */
export const errorAnswers = {
  400: errorSchema,
  401: errorSchema,
  403: errorSchema,
  404: errorSchema,
  409: errorSchema,
  413: errorSchema,
  429: errorSchema,
} as const;
