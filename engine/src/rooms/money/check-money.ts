import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays } from "../../base/years.ts";
import { makeFinding } from "../make-finding.ts";
import { addWorkingDays } from "../settlement/settle-hire.ts";
import type { HoldLife } from "./holds.ts";
import type { Instalment } from "./types.ts";

export interface MoneyInput {
  /** null: no quote was accepted yet */
  readonly owedPence: number | null;
  readonly depositDuePence: number;
  /** held as money or by holds that stand today */
  readonly depositHeldPence: number;
  readonly instalments: readonly Instalment[];
  readonly holds: readonly HoldLife[];
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly authorisationDays: number;
  readonly releaseWorkingDays: number;
  readonly termsId: string;
}

const pence = (value: number) => figure(value, "pence", "-", {}, "computed");

/**
 * The gate of money: a price that the customer accepted, paid, the damage deposit held, and held until it goes
 * back. A hold on a card that lapses before that day is to be taken anew: at the keys where a new one would last,
 * else in time on the road, as a condition.
 */
export function checkMoney(input: MoneyInput): readonly Finding[] {
  if (input.owedPence === null) return [open("money.noAcceptedQuote", {}, ["money.acceptQuote"])];
  return [
    ...owing(input, input.owedPence),
    ...deposit(input),
    ...input.holds.flatMap((hold) => outlived(hold, input)),
  ];
}

const open = (code: string, facts: Finding["facts"], mends: readonly string[], about?: string): Finding =>
  makeFinding("money", code, "unchecked", "policy", {
    facts,
    sources: ["practice"],
    mends,
    ...(about === undefined ? {} : { about }),
  });

function owing({ instalments }: MoneyInput, owed: number): Finding[] {
  if (owed <= 0) return [];
  const late = instalments.find(({ overdueDays }) => overdueDays > 0);
  if (late === undefined) return [open("money.owed", { owed: pence(owed) }, ["money.pay"])];
  const facts = { owed: pence(owed), late: pence(late.open), on: late.dueOn, days: late.overdueDays };
  return [open("money.overdue", facts, ["money.pay"])];
}

function deposit({ depositDuePence, depositHeldPence }: MoneyInput): Finding[] {
  if (depositHeldPence >= depositDuePence) return [];
  const facts = { due: pence(depositDuePence), held: pence(depositHeldPence) };
  return [open("money.depositNotHeld", facts, ["money.hold"])];
}

function outlived(hold: HoldLife, input: MoneyInput): Finding[] {
  if (hold.state !== "lapsesBefore") return [];
  const facts = { held: pence(hold.pence), standsTo: hold.standsTo, neededTo: hold.neededTo };
  const more = { about: hold.id, facts, sources: [input.termsId], mends: ["money.authoriseAgain"] };
  const newOneLasts =
    addDays(input.from, input.authorisationDays) >= addWorkingDays(input.to, input.releaseWorkingDays);
  return [makeFinding("money", "money.holdLapses", newOneLasts ? "unchecked" : "condition", "policy", more)];
}
