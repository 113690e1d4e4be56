import { readLedger, type Settlement } from "@setfair/engine";
import type { HireData } from "../desk/hire-data.ts";
import { entriesOf } from "./hire-money.ts";

/** What of a deposit can be moved now, whole pence, neither below 0 nor above what is held. */
export interface DepositNow {
  readonly keepPence: number;
  readonly backPence: number;
}

/**
 * The next step of the deposit by the settlement as it stands: what is clear and was not kept or given back before.
 * What was kept and is too much now is not here: it goes back as a refund.
 */
export function depositNow(data: Pick<HireData, "payments">, settlement: Settlement): DepositNow {
  const { fromDeposit, holdings } = readLedger(entriesOf(data.payments));
  const sum = (pick: (holding: (typeof holdings)[number]) => number) =>
    holdings.reduce((total, holding) => total + pick(holding), 0);
  const held = sum(({ remaining }) => remaining);
  const keepPence = Math.min(held, Math.max(0, settlement.depositKept.pence - fromDeposit));
  const back = settlement.depositReturned.pence - sum(({ released }) => released);
  return { keepPence, backPence: Math.min(held - keepPence, Math.max(0, back)) };
}
