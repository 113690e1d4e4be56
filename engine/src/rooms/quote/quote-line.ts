import { gbp, roundPence } from "../../base/money.ts";
import type { IsoDate } from "../../base/time.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import type { QuoteLine, VatKind } from "./types.ts";

/** A line of a quote in whole pence, with the VAT inside it by the rate in force on a day (HMRC VATREC12030: half a penny and over rounds up). */
export function quoteLine(
  code: QuoteLine["code"],
  about: string,
  count: number,
  eachPence: number,
  amountPence: number,
  kind: VatKind,
  today: IsoDate,
): QuoteLine {
  const ratePercent = ruleFigure(`vat.gb.${kind}Percent`, today).value;
  const vat = roundPence((amountPence * ratePercent) / (100 + ratePercent));
  return {
    code,
    about,
    count,
    each: gbp(eachPence),
    amount: gbp(amountPence),
    vat: { kind, ratePercent, amount: gbp(vat) },
  };
}
