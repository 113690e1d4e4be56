import { ACCOUNTS, gbp, unearned, vatTable } from "@setfair/engine";
import type { z } from "zod";
import { NO_VERSION } from "../api/based-on.ts";
import type { moneyAbout, moneyPageSchema } from "../api/schemas/money.ts";
import { type HireData, readRows } from "../desk/hire-data.ts";
import { dateOf, localOf } from "../desk/local-time.ts";
import type { HireStage, Store } from "../store/types.ts";
import { type HireMoney, readHireMoney } from "./hire-money.ts";
import { holdAnswer } from "./hire-money-answer.ts";
import { FIRM_TERMS, firmOnInvoices } from "./invoices.ts";

type Page = z.input<typeof moneyPageSchema>;
interface Read {
  readonly data: HireData;
  readonly money: HireMoney;
  readonly about: z.input<typeof moneyAbout>;
}

const BEFORE: readonly HireStage[] = ["quote", "booked"];
const OUT: readonly HireStage[] = ["handedOver", "onHire"];
/** Over, and perhaps not all paid, given back or paid back. */
const OPEN_AFTER: readonly HireStage[] = ["returned", "settled"];
/** Hires that ended otherwise, and closed ones, are looked through for so many days after they would have ended: common practice, no source. */
const LOOK_BACK_DAYS = 400;
const ENDED: readonly HireStage[] = ["closed", "cancelled", "noShow"];

async function readHires(store: Store, now: Date): Promise<readonly Read[]> {
  const since = new Date(now.getTime() - LOOK_BACK_DAYS * 86_400_000).toISOString();
  const depot = await store.depot.get();
  const rows = [
    ...(await store.hires.all({ stages: [...BEFORE, ...OUT, ...OPEN_AFTER] })),
    ...(await store.hires.all({ stages: [...ENDED], touchesFrom: since })),
  ];
  const all = await readRows(store, rows, depot, now, true);
  return all
    .filter(({ payments, row }) => payments.length > 0 || row.stage === "booked" || OUT.includes(row.stage))
    .map((data) => ({
      data,
      money: readHireMoney(data),
      about: {
        hireId: data.row.id,
        reference: data.row.number,
        customer: data.row.customerName,
        registration: data.row.registration,
        stage: data.row.stage,
      },
    }));
}

function heldOf({ data, money }: Read) {
  const { stage } = data.row;
  const prepaid = unearned({
    duePence: money.duePence,
    paidPence: money.settledPence,
    from: dateOf(data.from),
    to: dateOf(data.to),
    today: data.today,
    stage: BEFORE.includes(stage) ? "before" : OUT.includes(stage) ? "out" : "over",
  });
  const onCards = money.depositHeldPence - money.ledger.heldMoney;
  return { deposits: money.ledger.heldMoney, prepaid, onCards };
}

function held(hires: readonly Read[]): Page["held"] {
  const each = hires.map((read) => ({ read, held: heldOf(read) }));
  const sum = (what: "deposits" | "prepaid" | "onCards") =>
    each.reduce((total, { held: own }) => total + own[what], 0);
  return {
    deposits: gbp(sum("deposits")),
    prepaid: gbp(sum("prepaid")),
    total: gbp(sum("deposits") + sum("prepaid")),
    onCards: gbp(sum("onCards")),
    hires: each
      .filter(({ held: own }) => own.deposits > 0 || own.prepaid > 0 || own.onCards > 0)
      .sort((a, b) => (a.read.data.row.from < b.read.data.row.from ? -1 : 1))
      .map(({ read, held: own }) => ({
        ...read.about,
        deposits: gbp(own.deposits),
        prepaid: gbp(own.prepaid),
        onCards: gbp(own.onCards),
      })),
  };
}

function overdue(hires: readonly Read[]): Page["overdue"] {
  const late = hires.flatMap(({ about, money }) =>
    money.instalments
      .filter(({ overdueDays }) => overdueDays > 0)
      .map(({ what, dueOn, open, overdueDays }) => ({
        ...about,
        what,
        dueOn,
        open: gbp(open),
        days: overdueDays,
      })),
  );
  return late.sort((a, b) => b.days - a.days);
}

/** Paid beyond what is due, once the hire is over or did not take place. */
const toPayBack = (hires: readonly Read[]): Page["toPayBack"] =>
  hires
    .filter(
      ({ data, money }) =>
        (ENDED.includes(data.row.stage) || data.row.stage === "settled") && money.owedPence < 0,
    )
    .map(({ about, money }) => ({ ...about, amount: gbp(-money.owedPence) }));

/** Holds that lapse before the deposit goes back, the next to lapse first. */
function holds(hires: readonly Read[]): Page["holds"] {
  const some = hires
    .filter(({ data }) => !ENDED.includes(data.row.stage))
    .flatMap(({ about, money }) =>
      money.holds
        .filter(({ state }) => state !== "stands")
        .map((hold) => ({ ...about, hold: holdAnswer(hold) })),
    );
  return some.sort((a, b) => a.hold.daysLeft - b.hold.daysLeft);
}

/** What did not arrive, while the hire still owes or is owed. */
function failed(hires: readonly Read[]): Page["failed"] {
  return hires.flatMap(({ data, about, money }) =>
    money.owedPence === 0
      ? []
      : data.payments
          .filter(({ kind }) => kind === "failed")
          .map(({ pence, on, document }) => ({
            ...about,
            amount: gbp(pence),
            on,
            note: typeof document.note === "string" ? document.note : null,
            owed: gbp(money.owedPence),
          })),
  );
}

/** The money of the depot, computed from the ledgers of its hires. */
export async function moneyPage(store: Store, now: Date): Promise<Page> {
  const { timeZone } = await store.depot.get();
  const today = dateOf(localOf(now.toISOString(), timeZone));
  const hires = await readHires(store, now);
  return {
    today,
    held: held(hires),
    overdue: overdue(hires),
    toPayBack: toPayBack(hires),
    holds: holds(hires),
    failed: failed(hires),
    vat: vatTable(today).map((line) => ({ ...line })),
    firm: await firmOnInvoices(store, today),
    firmVersion: (await store.terms.newest(FIRM_TERMS))?.versionId ?? NO_VERSION,
    accounts: [...ACCOUNTS],
  };
}
