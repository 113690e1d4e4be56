/** Money: rounding to whole minor units, VAT inside a price. */
import * as z from "zod/mini";
import { MINOR_UNITS, minorUnits, roundPence, vatInside } from "../base/money.ts";
import { between } from "./args.ts";
import { entry } from "./entry.ts";

const AMOUNT = 1e9;
const currency = z.enum(Object.keys(MINOR_UNITS));

export const MONEY_FORMULAS = [
  entry(
    "money.roundPence",
    "pence",
    "hmrc-vatrec",
    "VATREC12030: less than half a penny down, half a penny and over up",
    { exactPence: between(-AMOUNT, AMOUNT) },
    (a) => roundPence(a.exactPence),
  ),
  entry(
    "money.vatInside",
    "pence",
    "hmrc-vatrec",
    "VATREC12020: price set with VAT inside, nearest penny",
    {
      grossPence: z.int().check(z.minimum(-AMOUNT), z.maximum(AMOUNT)),
      ratePercent: between(0, 100),
    },
    (a) => vatInside(a.grossPence, a.ratePercent),
  ),
  entry("money.minorUnits", "digits", "iso-4217", "minor units of the table", { currency }, (a) =>
    minorUnits(a.currency),
  ),
];
