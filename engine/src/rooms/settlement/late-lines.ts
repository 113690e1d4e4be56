import { figure } from "../../base/figure.ts";
import { roundPence } from "../../base/money.ts";
import { hoursBetween } from "../../base/time.ts";
import { priceOfTerms, settlementLine } from "./settlement-line.ts";
import type { LateLoss, SettlementInput, SettlementLine } from "./types.ts";

/** What shows a loss: a record, or a photograph of its paper. */
const isShown = ({ records, photographs }: LateLoss): boolean => records.length + photographs.length > 0;

const sumOf = (losses: readonly LateLoss[]): number => losses.reduce((sum, { pence }) => sum + pence, 0);

/**
 * Back later than the grace, hours: what the lateness really cost the firm is charged, as far as something shows it,
 * and at most the hourly rate of the terms. With no loss shown the line is there and costs nothing. A settlement that
 * was shown before losses had to be told keeps its hourly rate.
 * @source Consumer Rights Act 2015, Sch. 2 para 6 (from memory): a sum for a breach must not be disproportionately high
 */
export function lateLines(input: SettlementInput): SettlementLine[] {
  const { hire, terms, lateAtRate = false } = input;
  const { lateGraceMinutes, latePencePerHour } = terms.tariff;
  const lateMinutes =
    hire.returnedAt <= hire.to ? 0 : Math.round(hoursBetween(hire.to, hire.returnedAt, hire.timeZone) * 60);
  const hours = (lateMinutes - lateGraceMinutes) / 60;
  if (hours <= 0) return [];
  const told = (input.lateLosses ?? []).filter(({ pence }) => pence > 0);
  const shown = told.filter(isShown);
  const mostPence = roundPence(hours * latePencePerHour);
  return [
    settlementLine({
      id: "late",
      code: "late",
      about: "late",
      pence: lateAtRate ? mostPence : Math.min(sumOf(shown), mostPence),
      because: lateAtRate ? null : told.length === 0 ? "noLoss" : shown.length === 0 ? "noEvidence" : null,
      quantity: figure(hours, "h", "-", { lateMinutes, graceMinutes: lateGraceMinutes }, "measured"),
      working: [
        ...shown.map(({ kind, pence, about }) =>
          figure(pence, "pence", "-", { loss: kind, about }, "declared"),
        ),
        ...(lateAtRate
          ? [priceOfTerms(terms, latePencePerHour, "pence/h")]
          : [
              priceOfTerms(terms, latePencePerHour, "pence/h", { atMost: true }),
              figure(mostPence, "pence", "-", { of: "atMost", hours, latePencePerHour }, "computed"),
            ]),
      ],
      records: [...(hire.returnRecords ?? []), ...shown.flatMap(({ records }) => records)],
      photographs: shown.flatMap(({ photographs }) => photographs),
    }),
  ];
}
