import { LOSS_KINDS } from "@setfair/engine";
import * as z from "zod";
import { settlementEntrySchema } from "./after.ts";
import {
  dateSchema,
  hashSchema,
  idSchema,
  instantSchema,
  localSchema,
  moneySchema,
  roomResultSchema,
  textSchema,
} from "./common.ts";
import { named } from "./named.ts";

const pence = z.int().min(0).max(100_000_000);

export const repairCostSchema = named(
  "RepairCost",
  z.strictObject({
    /** id of the mark */
    differenceId: idSchema,
    kind: z.enum(["estimate", "invoice"]),
    partsPence: pence,
    labourPence: pence,
    /** who wrote it and its number */
    reference: textSchema(200),
    /** of the paper itself */
    photographs: z.array(hashSchema).max(10).optional(),
  }),
);

const shots = z.array(hashSchema).min(1).max(20);
/** What else the desk enters on a settlement, for good; the last entry on a thing holds. */
export const settlementNoteSchema = named(
  "SettlementNote",
  z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("cleaning"),
      /** beyond the standard that is included */
      hours: z.number().min(0).max(40),
      reason: textSchema(500),
      photographs: shots,
    }),
    z.strictObject({
      kind: z.literal("loss"),
      /** what a late return cost us: given back to the next hirer, overtime, a day's hire; the last of each kind holds, 0 takes it back */
      what: z.enum(LOSS_KINDS),
      /** with its VAT, as it was paid or given back */
      pence,
      /** how much of what, and who has it on paper */
      reason: textSchema(500),
      /** of the paper that shows it */
      photographs: shots,
    }),
    z.strictObject({
      kind: z.literal("age"),
      differenceId: idSchema,
      ageYears: z.number().min(0).max(60),
      /** how the age is known */
      reason: textSchema(500),
    }),
    z.strictObject({
      kind: z.literal("awaiting"),
      differenceId: idSchema,
      /** the most that the repair may cost the hirer; held, not charged */
      mostPence: pence,
      reason: textSchema(500),
    }),
    z.strictObject({
      kind: z.literal("claim"),
      about: textSchema(200),
      partsPence: pence,
      labourPence: pence,
      ageYears: z.number().min(0).max(60),
      lifeYears: z.number().gt(0).max(60),
      incident: textSchema(80).nullable(),
      reason: textSchema(500),
      /** as it was found */
      photographs: shots,
      /** as the place left: photographs of this hire's walk-round out */
      departure: shots,
    }),
    z.strictObject({
      kind: z.literal("file"),
      with: z.enum(["insurer", "thirdParty"]),
      name: textSchema(120),
      reference: textSchema(120),
      on: dateSchema,
      state: z.enum(["opened", "sent", "answered", "paid", "closed"]),
      paidPence: pence,
      note: z.string().max(1000),
    }),
    z.strictObject({
      kind: z.literal("notice"),
      /** the client's own, so that sending twice charges once */
      id: idSchema,
      what: z.enum(["fine", "toll"]),
      issuer: textSchema(120),
      reference: textSchema(120),
      /** when and where it was, as the notice says */
      at: localSchema,
      where: textSchema(200),
      pence: pence.min(1),
      /** for dealing with it; at most the fee that the terms of this hire state */
      feePence: pence,
      photographs: shots,
    }),
    z.strictObject({
      kind: z.literal("mended"),
      differenceId: idSchema,
      on: dateSchema,
      who: textSchema(120),
    }),
  ]),
);
export const secondSignatureSchema = named(
  "SecondSignature",
  z.strictObject({ differenceId: idSchema, reason: textSchema(500) }),
);
export const lineReplySchema = named(
  "LineReply",
  z.strictObject({ lineId: idSchema, answer: z.enum(["reply", "withdraw"]), text: textSchema(1000) }),
);
export const holdSchema = named(
  "DepositHold",
  z.strictObject({ promisedOn: dateSchema, reason: textSchema(500) }),
);
export const lostPropertySchema = named(
  "LostProperty",
  z.strictObject({
    what: textSchema(200),
    where: textSchema(200),
    /** where it is now, or how it was sent */
    now: z.enum(["kept", "posted", "collected", "givenAway"]),
    costPence: pence,
    note: z.string().max(500),
  }),
);

/** What the hirer sees of the settlement by their link, line by line. */
export const statementSchema = named(
  "Statement",
  z.object({
    reference: z.string(),
    customer: z.string(),
    firm: z.string(),
    depot: z.object({ name: z.string(), telephone: z.string() }),
    vehicle: z.string(),
    frozenAt: instantSchema,
    /** engine: Settlement, as it stands now */
    result: roomResultSchema,
    releaseBy: z.string(),
    promisedOn: z.string().nullable(),
    total: moneySchema,
    /** photographs of each line, as it went out and as it came back */
    evidence: z.array(z.object({ lineId: idSchema, out: z.array(z.string()), back: z.array(z.string()) })),
    /** what was said of the lines, oldest first; `by` null is the hirer */
    entries: z.array(settlementEntrySchema),
  }),
);
export const statementReplySchema = named(
  "StatementReply",
  z.strictObject({
    lineId: idSchema,
    answer: z.enum(["accept", "dispute"]),
    /** why, in the hirer's own words; needed to dispute */
    text: z.string().max(1000),
  }),
);
