import { readLedger } from "@setfair/engine";
import { badField } from "../api/refusal.ts";
import { chargesOfNotice, entriesOfHire, noticeId } from "../desk/settlement-entries.ts";
import { addEntry, type OpenMoney } from "./change-money.ts";
import { entriesOf } from "./hire-money.ts";

/**
 * Takes back what was charged for a fine or a toll, its fee with it, by credits in the ledger. Inside the transaction
 * that keeps the desk's word. Refused where it was taken back before, or credits under Money left less than that.
 */
export async function creditNotice(open: OpenMoney, lineId: string): Promise<void> {
  const { store, data } = open;
  await store.payments.lock(data.row.id);
  const notice = (await entriesOfHire(store, data)).find(({ id }) => noticeId(id) === lineId);
  const entries = entriesOf(await store.payments.ofHire(data.row.id));
  const { undone, charged } = readLedger(entries);
  const ids = notice === undefined ? [] : chargesOfNotice(notice);
  const charges = entries.filter(
    ({ id, kind }) => kind === "charge" && ids.includes(id) && undone[id] === undefined,
  );
  const isBack = (id: string) => entries.some((each) => each.id === creditId(id));
  const stands = charges.filter(({ id }) => !isBack(id));
  const pence = stands.reduce((sum, each) => sum + each.pence, 0);
  if (stands.length === 0 || pence > charged)
    throw badField(
      "answer",
      "expected a fine or a toll whose charge stands: it was taken back, or credited under Money",
    );
  for (const { id, pence: sum, line, note } of stands)
    await addEntry(open, {
      id: creditId(id),
      kind: "credit",
      pence: sum,
      on: data.today,
      route: null,
      of: null,
      line,
      note,
    });
}

const creditId = (chargeId: string): string => `${chargeId}-back`;
