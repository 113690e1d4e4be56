import * as z from "zod/mini";
import { answerSchema, figureSchema, moneySchema } from "./answer.ts";

const line = z.strictObject({
  id: z.string(),
  code: z.enum([
    "mileage",
    "fuel",
    "fuelService",
    "def",
    "lpg",
    "cleaning",
    "waste",
    "cassette",
    "late",
    "kit",
    "damage",
    "notCharged",
  ]),
  about: z.string(),
  quantity: z.nullable(figureSchema),
  amount: moneySchema,
  because: z.nullable(
    z.enum([
      "existing",
      "fairWear",
      "ours",
      "hirer",
      "unknown",
      "chargedElsewhere",
      "noTariff",
      "withinAllowance",
      "noDeparturePhotograph",
      "needsSecondSignature",
      "withdrawn",
    ]),
  ),
  capped: z.boolean(),
  incident: z.nullable(z.string()),
  disputed: z.boolean(),
  evidence: z.strictObject({
    records: z.array(z.string()),
    photographs: z.array(z.string()),
    differenceId: z.nullable(z.string()),
  }),
  working: z.array(figureSchema),
});

export const settleOutputSchema = answerSchema(
  z.strictObject({
    hireId: z.string(),
    termsId: z.string(),
    lines: z.array(line),
    overExcess: moneySchema,
    total: moneySchema,
    disputed: moneySchema,
    depositHeld: moneySchema,
    depositKept: moneySchema,
    depositWithheld: moneySchema,
    depositReturned: moneySchema,
    stillOwed: moneySchema,
    releaseBy: z.string(),
  }),
);
