import type { IsoDate } from "../../base/time.ts";
import { ruleAt, ruleFigure, ruleText } from "../../rules/rule-at.ts";
import { type VatKind, vatKindSchema } from "../quote/types.ts";
import { LINE_KINDS, type LineKind } from "./types.ts";

/** How VAT falls on a kind of line on a day, by the dated table. @throws where the table has no line, which is a hole in the data */
export function vatOfLine(line: LineKind, on: IsoDate): VatKind {
  return vatKindSchema.parse(ruleText(`vat.gb.line.${line}`, on));
}

/** VAT inside a price, whole pence, to the nearer penny (HMRC VATREC12020: a price set with VAT inside is not rounded down). */
export function vatRate(kind: VatKind, on: IsoDate): number {
  return ruleFigure(`vat.gb.${kind}Percent`, on).value;
}

export interface LineVat {
  readonly line: LineKind;
  readonly kind: VatKind;
  readonly ratePercent: number;
  readonly source: string;
  /** known at first hand */
  readonly isRead: boolean;
  /** what an accountant must confirm, where anything */
  readonly toConfirm: string | null;
}

/** The whole table as it stands on a day, for whoever checks it. */
export function vatTable(on: IsoDate): readonly LineVat[] {
  return LINE_KINDS.map((line) => {
    const rule = ruleAt(`vat.gb.line.${line}`, on);
    const kind = vatOfLine(line, on);
    return {
      line,
      kind,
      ratePercent: vatRate(kind, on),
      source: rule?.source ?? "",
      isRead: rule?.confidence === "read",
      toConfirm: rule?.unsettled ?? null,
    };
  });
}
