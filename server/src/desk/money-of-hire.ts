import { gbp, type Money } from "@setfair/engine";
import { readHireMoney } from "../money/hire-money.ts";
import type { HireData } from "./hire-data.ts";

export interface MoneyOfHire {
  readonly price: Money<"GBP">;
  readonly paid: Money<"GBP">;
  readonly owed: Money<"GBP">;
  readonly depositDue: Money<"GBP">;
  readonly depositHeld: Money<"GBP">;
}

/** What the hire costs, what came in and what is held; whole pence. Owed is negative where too much was paid. */
export function moneyOfHire(data: HireData): MoneyOfHire {
  const money = readHireMoney(data);
  return {
    price: gbp(money.pricePence),
    paid: gbp(money.ledger.paid - money.ledger.refunded),
    owed: gbp(money.owedPence),
    depositDue: gbp(money.depositDuePence),
    depositHeld: gbp(money.depositHeldPence),
  };
}
