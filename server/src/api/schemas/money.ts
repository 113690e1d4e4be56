import * as z from "zod";
import { PAYMENT_KINDS } from "../../store/types.ts";
import { dateSchema, idSchema, instantSchema, moneySchema } from "./common.ts";
import { named } from "./named.ts";

/** Recorded by hand. The pence are never negative; the kind says which way it goes. */
export const newPaymentSchema = named(
  "NewPayment",
  z.strictObject({
    /** made by the client, so that sending twice records once */
    id: idSchema,
    kind: z.enum(PAYMENT_KINDS),
    /** whole pence, more than 0 */
    pence: z.int().min(1).max(5_000_000),
    on: dateSchema,
    method: z.enum(["card", "transfer", "cash", "cardHold"]),
    note: z.string().max(200).optional(),
  }),
);

export const paymentSchema = named(
  "Payment",
  z.object({
    id: idSchema,
    kind: z.enum(PAYMENT_KINDS),
    amount: moneySchema,
    on: dateSchema,
    method: z.string(),
    note: z.string().nullable(),
    by: z.string(),
    at: instantSchema,
  }),
);
