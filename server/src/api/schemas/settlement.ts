import * as z from "zod";
import { settlementEntrySchema } from "./after.ts";
import { dateSchema, idSchema, instantSchema, moneySchema, roomResultSchema, textSchema } from "./common.ts";
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
  }),
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
