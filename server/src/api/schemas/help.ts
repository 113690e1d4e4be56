import * as z from "zod";
import { idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

/** What the fault finder needs; the same for the desk and for the hirer's phone. */
export const faultsSchema = named(
  "Faults",
  z.object({
    /** everything that can go wrong with this vehicle (engine: SymptomOnVehicle) */
    symptoms: z.array(z.unknown()),
    /** how often the depot found each cause */
    history: z.array(z.object({ symptom: z.string(), cause: z.string(), count: z.int() })),
  }),
);

/** One time something failed on a hire, and what was tried. */
export const helpEntrySchema = named(
  "HelpEntry",
  z.object({
    recordId: idSchema,
    at: instantSchema,
    symptom: z.string(),
    outcome: z.enum(["stop", "fixed", "found", "call", "left"]),
    answers: z.array(z.object({ check: z.string(), answer: z.string() })),
    causes: z.array(z.string()),
    by: z.enum(["hirer", "desk"]),
    note: z.string().nullable(),
  }),
);

export const helpSchema = named(
  "Help",
  z.object({
    faults: faultsSchema,
    /** chance, 0 to 1, that a store is at the end that is trouble, now; empty without a forecast */
    stores: z.array(z.object({ store: z.string(), troubleChance: z.number() })),
    /** oldest first */
    entries: z.array(helpEntrySchema),
  }),
);
