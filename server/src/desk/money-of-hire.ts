import { gbp, type Money } from "@setfair/engine";
import type { HireData } from "./hire-data.ts";
import { partOf } from "./hire-data.ts";

export interface MoneyOfHire {
  readonly price: Money<"GBP">;
  readonly paid: Money<"GBP">;
  readonly owed: Money<"GBP">;
  readonly depositDue: Money<"GBP">;
  readonly depositHeld: Money<"GBP">;
}

/** What the hire costs, what came in and what is held; whole pence. Owed is negative where too much was paid. */
export function moneyOfHire(data: HireData): MoneyOfHire {
  const quote = partOf(data, "quote")?.answer.result ?? null;
  const sum = (...kinds: readonly string[]) =>
    data.payments.filter(({ kind }) => kinds.includes(kind)).reduce((total, { pence }) => total + pence, 0);
  const paid = sum("payment") - sum("refund");
  const price = quote?.total.pence ?? 0;
  return {
    price: gbp(price),
    paid: gbp(paid),
    owed: gbp(price - paid),
    depositDue: gbp(quote?.securityDeposit.pence ?? 0),
    depositHeld: gbp(sum("depositHeld") - sum("depositReleased") - sum("depositCharged")),
  };
}
