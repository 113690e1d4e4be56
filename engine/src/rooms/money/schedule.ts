import type { IsoDate } from "../../base/time.ts";
import { addDays, daysBetween } from "../../base/years.ts";
import type { Instalment } from "./types.ts";

/** Days before the hire by which the balance is due, where the terms name none: common practice, no source. */
export const BALANCE_DAYS_BEFORE = 28;

/** A part that was agreed with the hirer. */
export interface AgreedPart {
  readonly dueOn: IsoDate;
  readonly pence: number;
}
export interface PaymentPlanInput {
  /** everything that is owed for the hire, pence: price, settlement, charges less credits */
  readonly duePence: number;
  /** the price alone; what goes beyond it is due at once */
  readonly pricePence: number;
  readonly bookingDepositPence: number;
  readonly acceptedOn: IsoDate;
  readonly from: IsoDate;
  readonly today: IsoDate;
  readonly balanceDaysBefore: number;
  /** agreed with the hirer instead of deposit and balance; empty where nothing was */
  readonly agreed: readonly AgreedPart[];
  /** what came in and was not paid back, with what was kept from the deposit */
  readonly paidPence: number;
}

type Planned = Pick<Instalment, "what" | "dueOn" | "pence">;

function usual(input: PaymentPlanInput): Planned[] {
  const first = Math.min(input.bookingDepositPence, input.pricePence);
  const balanceOn = addDays(input.from, -input.balanceDaysBefore);
  const late = [balanceOn, input.acceptedOn].sort()[1]!;
  return [
    { what: "bookingDeposit", dueOn: input.acceptedOn, pence: first },
    { what: "balance", dueOn: late, pence: input.pricePence - first },
  ];
}

/** What was agreed; a price that rose since is due with the last part, one that fell shortens the last parts. */
function agreed({ agreed: parts, pricePence }: PaymentPlanInput): Planned[] {
  const sorted = [...parts].sort((a, b) => (a.dueOn < b.dueOn ? -1 : 1));
  let left = pricePence;
  return sorted.map(({ dueOn, pence }, k) => {
    const isLast = k === sorted.length - 1;
    const part = isLast ? left : Math.min(left, pence);
    left -= part;
    return { what: "part", dueOn, pence: part };
  });
}

/**
 * When the hire is to be paid: the booking deposit and the balance, or the parts that were agreed; charges beyond
 * the price are due at once. What was paid goes to the earliest part first. Parts sum to what is due, where that
 * is not negative.
 */
export function planPayments(input: PaymentPlanInput): readonly Instalment[] {
  const planned = input.agreed.length === 0 ? usual(input) : agreed(input);
  const beyond = input.duePence - input.pricePence;
  const all = shorten(
    beyond > 0 ? [...planned, { what: "charges" as const, dueOn: input.today, pence: beyond }] : planned,
    input.duePence,
  );
  let paid = Math.max(0, input.paidPence);
  return all.map((part) => {
    const covered = Math.min(paid, part.pence);
    paid -= covered;
    const open = part.pence - covered;
    const days = daysBetween(part.dueOn, input.today);
    return { ...part, paid: covered, open, overdueDays: open > 0 && days > 0 ? days : 0 };
  });
}

/** Credits take off the last parts first. */
function shorten(parts: readonly Planned[], duePence: number): Planned[] {
  let left = Math.max(0, duePence);
  return parts
    .map((part) => {
      const pence = Math.min(left, part.pence);
      left -= pence;
      return { ...part, pence };
    })
    .filter(({ pence }) => pence > 0);
}
