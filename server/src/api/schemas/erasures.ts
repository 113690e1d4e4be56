import * as z from "zod";
import { HOLD_CODES } from "../../desk/erasure-holds.ts";
import { dateSchema, idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

/** What keeps a person from being erased, and until when; text `erasure.hold.<code>`. */
const erasureHoldSchema = named(
  "ErasureHold",
  z.object({
    code: z.enum(HOLD_CODES),
    hireId: idSchema,
    reference: z.string(),
    /** day on which it ends as far as is known; null where nobody has said one */
    until: dateSchema.nullable(),
    /** sums in whole pence */
    facts: z.record(z.string(), z.union([z.string(), z.number()])),
  }),
);

/** A tablet of the yard that recorded something of this person's hires, or keeps a walk-round of them. */
const tabletSchema = named(
  "Tablet",
  z.object({
    /** as it stands on the tablet's own screen */
    id: z.string(),
    /** account that was signed in there last; null where only its records are known */
    by: z.string().nullable(),
    /** instant of its last contact; of one that only sent records, of the last of them */
    seenAt: instantSchema,
    /** whole days without contact */
    unseenDays: z.int(),
    /** null while it keeps something */
    forgottenAt: instantSchema.nullable(),
  }),
);

export const erasureSchema = named(
  "Erasure",
  z.object({
    /** none: nobody asked · waits: goes when nothing holds it any more · erased */
    state: z.enum(["none", "waits", "erased"]),
    /** when it was asked for, or done, and by whom */
    at: instantSchema.nullable(),
    by: z.string().nullable(),
    /** while it waits: day by which the person is told what became of it */
    answerBy: dateSchema.nullable(),
    holds: z.array(erasureHoldSchema),
    tablets: z.array(tabletSchema),
    /** a tablet without contact for so many days is to be looked for */
    unseenAfterDays: z.int(),
  }),
);

export const erasureQuerySchema = z.object({
  /** now: refused with what holds it · whenClear: goes by itself when nothing holds it any more */
  when: z.enum(["now", "whenClear"]).default("now"),
});

/** What a tablet keeps something of. */
export const tabletKeepsSchema = named(
  "TabletKeeps",
  z.strictObject({ tabletId: z.string().min(8).max(80), hires: z.array(idSchema).max(5000) }),
);
export const tabletForgetsSchema = named(
  "TabletForgets",
  z.object({
    /** of these hires it is to forget everything, once it has sent what waits */
    forget: z.array(idSchema),
  }),
);
