import { type Figure, figure } from "../../base/figure.ts";
import { gbp } from "../../base/money.ts";
import type { SettlementInput, SettlementLine } from "./types.ts";

export type InputDifference = SettlementInput["differences"][number];

interface Made {
  readonly id: string;
  readonly code: SettlementLine["code"];
  readonly about: string;
  readonly pence: number;
  readonly quantity?: Figure;
  readonly working?: readonly Figure[];
  readonly because?: SettlementLine["because"];
  readonly awaitingPence?: number;
  readonly capped?: boolean;
  readonly incident?: string | null;
  readonly from?: InputDifference;
  readonly records?: readonly string[];
  readonly photographs?: readonly string[];
}

/** A price of the terms, with the day from which the version that the hire was booked under holds. */
export const priceOfTerms = (
  { id, validFrom }: SettlementInput["terms"],
  value: number,
  unit: string,
  inputs: Figure["inputs"] = {},
): Figure => figure(value, unit, "-", { ...inputs, termsFrom: validFrom }, "declared", id);

/** A line of the settlement with its evidence; pence must be whole and not negative. */
export function settlementLine(made: Made): SettlementLine {
  if (made.pence < 0) throw new RangeError(`settlement line ${made.id}: negative`);
  const { from } = made;
  return {
    id: made.id,
    code: made.code,
    about: made.about,
    quantity: made.quantity ?? null,
    amount: gbp(made.pence),
    because: made.because ?? null,
    awaiting: gbp(made.awaitingPence ?? 0),
    capped: made.capped ?? false,
    incident: made.incident ?? null,
    disputed: false,
    evidence: {
      records: made.records ?? (from === undefined ? [] : [...from.outRecords, ...from.backRecords]),
      photographs: made.photographs ?? from?.photographs ?? [],
      differenceId: from?.id ?? null,
    },
    working: made.working ?? [],
  };
}

/** What is seen and not charged, with the reason. */
export function notCharged(
  from: InputDifference,
  because: NonNullable<SettlementLine["because"]>,
): SettlementLine {
  return settlementLine({ id: from.id, code: "notCharged", about: aboutOf(from), pence: 0, because, from });
}

export function aboutOf(difference: InputDifference): string {
  return difference.kind === "mark"
    ? difference.part
    : (difference.checkId ?? difference.charge ?? difference.id);
}
