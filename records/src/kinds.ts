/**
 * What a record may say. Content of a known kind is checked; details beyond the named fields are kept as
 * they come, since a record is evidence. Persons are named in `refs` by id only, never in `kind`.
 */
import * as z from "zod/mini";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
export const hashSchema = z.string().check(z.regex(/^[0-9a-f]{64}$/, "expected a SHA-256 in lower-case hex"));
const instant = z.iso.datetime();

/** A record that is named by what it is and what it held. */
export const recordPointerSchema = z.strictObject({ id: z.uuid(), hash: hashSchema });
export type RecordPointer = z.infer<typeof recordPointerSchema>;

/** One stroke of a pen: points with time in ms from its start. */
const strokeSchema = z
  .array(
    z.strictObject({
      x: z.number(),
      y: z.number(),
      t: z.optional(z.number()),
      pressure: z.optional(z.number()),
    }),
  )
  .check(z.minLength(1), z.maxLength(4000));

const localMinute = z
  .string()
  .check(z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/, "expected a local date and time"));

/**
 * Signed: exactly the listed records and the text shown, by one person in one role. What arrives later is an
 * addendum. Drawn as strokes, or written with a pen on a sheet of paper whose photograph is named.
 */
export const signatureContentSchema = z
  .strictObject({
    records: z.array(recordPointerSchema).check(z.maxLength(2000)),
    signer: z.strictObject({ personId: z.optional(z.string()), name: text(120) }),
    role: z.enum(["hirer", "additionalDriver", "desk", "yard", "manager"]),
    /** what this signature is for: "condition", "agreement", "briefing", "liability", "settlement" … */
    purpose: text(60),
    /** the text as shown, with its language, so that it can be shown again */
    shown: z.strictObject({ text: text(40_000), language: text(35) }),
    strokes: z.array(strokeSchema).check(z.maxLength(400)),
    /** the photograph of the signed sheet, and when it was signed on the depot's clock */
    onPaper: z.optional(z.strictObject({ sha256: hashSchema, at: localMinute })),
  })
  .check(
    z.refine(({ strokes, onPaper }) => strokes.length > 0 || onPaper !== undefined, {
      path: ["strokes"],
      error: "expected at least one stroke, or the photograph of the signed sheet",
    }),
  );
export type SignatureContent = z.infer<typeof signatureContentSchema>;

/** What arrived after a signature: belongs to it, was never part of it. */
export const addendumContentSchema = z.strictObject({
  to: recordPointerSchema,
  records: z.array(recordPointerSchema).check(z.minLength(1), z.maxLength(2000)),
  why: text(400),
});

/** A result as it was shown when someone signed, accepted, paid or was refused on it. */
export const frozenContentSchema = z.strictObject({
  room: text(40),
  result: z.unknown(),
  inputs: z.record(z.string(), hashSchema),
  versions: z.strictObject({
    vehicle: z.nullable(text(80)),
    rules: z.nullable(text(80)),
    terms: z.nullable(text(80)),
    engine: text(80),
  }),
});
export type FrozenContent = z.infer<typeof frozenContentSchema>;

/** One value of one thing, as read. `about` names the thing: "odometer", "fuel", "lpg", "battery12.voltage" … */
export const readingContentSchema = z.looseObject({
  about: text(120),
  value: z.union([z.number(), z.string().check(z.maxLength(400)), z.boolean()]),
  unit: z.optional(z.string().check(z.maxLength(20))),
  at: z.optional(instant),
});

/** Whoever signs says which of several readings of one thing holds. */
export const answerContentSchema = z.looseObject({
  about: text(120),
  among: z.array(recordPointerSchema).check(z.minLength(2)),
  holds: z.uuid(),
});

/** Puts right what was recorded wrongly. The first record stays; who corrects it and why stand beside it. */
export const correctionContentSchema = z.looseObject({
  to: recordPointerSchema,
  by: text(120),
  why: text(400),
  /** fields of that record's content that hold now, in the place of those it wrote */
  instead: z.record(z.string(), z.unknown()),
});

const about = z.looseObject({ about: text(120) });

export const RECORD_CONTENTS = {
  /** `late` where it is keyed in afterwards from a sheet of paper: when it was done, by whom, the sheets */
  walkStarted: z.looseObject({
    direction: z.enum(["out", "back"]),
    late: z.optional(
      z.strictObject({
        doneAt: localMinute,
        doneBy: text(120),
        sheets: z.array(hashSchema).check(z.minLength(1), z.maxLength(20)),
      }),
    ),
  }),
  walkFinished: z.looseObject({ direction: z.enum(["out", "back"]) }),
  reading: readingContentSchema,
  /** counted kit */
  count: z.looseObject({ about: text(120), found: z.int().check(z.minimum(0)) }),
  /** looked at: same as it left, new mark, too wet or dirty to judge, or an answer of a check */
  look: z.looseObject({ about: text(120), saw: text(60) }),
  mark: z.looseObject({ about: text(120), photographs: z.array(hashSchema) }),
  photograph: z.looseObject({ about: text(120), sha256: hashSchema }),
  /** one item of the briefing shown, done by the hirer's own hands, understood */
  briefed: about,
  answer: answerContentSchema,
  /** what was tried when something failed, on the hirer's phone or told over the telephone; `about` is the symptom */
  help: z.looseObject({
    about: text(120),
    outcome: z.enum(["stop", "fixed", "found", "call", "left"]),
    answers: z.array(z.looseObject({ check: text(120), answer: text(20) })).check(z.maxLength(60)),
  }),
  /** what the hirer says to one line of the settlement; `about` is the line. Photographs of theirs may go with it */
  reply: z.looseObject({
    about: text(200),
    answer: z.enum(["accept", "dispute"]),
    text: z.string().check(z.maxLength(1000)),
    photographs: z.optional(z.array(hashSchema).check(z.maxLength(6))),
  }),
  note: z.looseObject({ text: text(4000) }),
  correction: correctionContentSchema,
  signature: signatureContentSchema,
  addendum: addendumContentSchema,
  frozen: frozenContentSchema,
  override: z.looseObject({ findingCode: text(120), reason: text(2000) }),
  keys: z.looseObject({ direction: z.enum(["out", "back"]) }),
} as const;
export type RecordKind = keyof typeof RECORD_CONTENTS;
export const RECORD_KINDS = Object.keys(RECORD_CONTENTS) as [RecordKind, ...RecordKind[]];
