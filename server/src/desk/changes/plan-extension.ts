import { addDays, daysBetween, withRules } from "@setfair/engine";
import { badField, Refusal } from "../../api/refusal.ts";
import { isBeforeKeys, plainFinding } from "../glass.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { instantOf, localOf } from "../local-time.ts";
import { holdStock, stockOfHire } from "../stock.ts";
import { newFindings, readAsIf, refuseWith, stopsIt } from "./as-it-would-be.ts";
import { type GivesWay, moveStops, moveVoids, planMoves, writeMoves } from "./give-way.ts";
import { nextHires, personOf } from "./next-hires.ts";
import { keepQuote, priceForHirer, settleDifference } from "./price-after.ts";
import { type Ask, type EffectTask, line, NOTHING, type Person, type Planner, task } from "./types.ts";
import { signedBefore } from "./void-signatures.ts";

type ExtensionAsk = Ask<"extension">;
const minuteMs = 60_000;

/** Later back than agreed, as the hirer asks: diary, licence, insurance, due dates, deposit, price. */
export const planExtension: Planner<"extension"> = async (ask) => {
  const { data, change } = ask;
  if (change.to <= data.to) throw badField("to", `expected a time after ${data.to}`);
  const to = instantOf(change.to, data.depot.timeZone, "to");
  const moves = await planMoves(ask, change.moves);
  const after = withoutMoved(await readAsIf(ask, { to }), moves);
  const shelf = await shortShelf(ask, after);
  const findings = [...shelf, ...newFindings(data, after)];
  const price = priceForHirer(data, after);
  const people = await lateOnes(ask, to);
  const isOut = !isBeforeKeys(data.row.stage);
  const nameOf = (id: string) => people.find(({ hireId }) => hireId === id)?.reference ?? id;
  return {
    effects: {
      ...NOTHING,
      findings: [...findings],
      stops: [
        ...(shelf.length > 0 ? [line("shelfShort")] : []),
        ...moveStops(moves),
        ...(partOf(data, "quote") !== null && price.money === null ? [line("noPrice")] : []),
      ],
      voided: [
        ...(isOut || signedBefore(data, "agreement").length === 0 ? [] : [line("agreementDays")]),
        ...moveVoids(moves, nameOf),
      ],
      toDo: [
        ...tasksOf(data, change.to, isOut),
        ...settleDifference(data, price.money, isOut ? data.to : data.from),
      ],
      money: price.money,
      people: people.filter(({ hireId }) => !change.moves.some((move) => move.hireId === hireId)),
      says:
        isOut && data.nowLocal > data.to
          ? [line("coverMayHaveEnded", { due: data.to })]
          : [line("beforeDue", { due: data.to })],
    },
    write: async (hire) => {
      if (shelf.length > 0 || stopsIt(findings)) throw refuseWith("taken", findings);
      await writeMoves(hire, ask, moves);
      const booked = await hire.store.bookings.of(data.row.id);
      if (booked !== null) {
        const answer = await hire.store.bookings.book({ ...booked, to });
        if (!answer.ok)
          throw new Refusal("taken", { problems: [{ path: "to", expected: "a time before the next hire" }] });
      }
      await holdStock(hire.store, data, { from: data.row.from, to });
      await hire.update({ to });
      await keepQuote(hire, price.quote);
      return isOut ? {} : { voidedRecords: [...signedBefore(data, "agreement")] };
    },
  };
};

/** Things on loan that somebody else has in the days added. */
async function shortShelf({ store, data }: ExtensionAsk, after: HireData) {
  const { findings } = await stockOfHire(store, after, partOf(data, "quote")?.extras ?? []);
  return withRules(data.ruleBook, () =>
    findings.filter(({ code }) => code === "stock.short").map(plainFinding),
  );
}

const withoutMoved = (after: HireData, moves: readonly GivesWay[]): HireData => ({
  ...after,
  bookings: after.bookings.filter(({ hireId }) => !moves.some((move) => move.hireId === hireId)),
});

/** Hires that would not find the vehicle ready, with how late and where else they could go. */
async function lateOnes(ask: ExtensionAsk, to: string): Promise<readonly Person[]> {
  const { store, data } = ask;
  const ready = new Date(Date.parse(to) + data.depotDocument.turnaroundMinutes * minuteMs).toISOString();
  const next = await nextHires(store, data, { from: data.row.to, to: ready });
  const readyAt = localOf(ready, data.depot.timeZone);
  return Promise.all(
    next.map(({ row, booking }) =>
      personOf(
        ask,
        row,
        line("nextLate", {
          from: localOf(booking.from, data.depot.timeZone),
          readyAt,
          minutes: Math.round((Date.parse(ready) - Date.parse(booking.from)) / minuteMs),
        }),
        true,
      ),
    ),
  );
}

function* tasksOf(data: HireData, to: string, isOut: boolean): Iterable<EffectTask> {
  const due = isOut ? data.to : data.from;
  yield task(data, "amendment", due, { to });
  yield task(data, "insurerLonger", due, { to });
  const hold = data.payments.findLast(({ kind }) => kind === "depositHeld");
  const security = data.terms?.document.security;
  if (hold !== undefined && security !== undefined) {
    const lapses = addDays(hold.at.slice(0, 10), security.authorisationDays);
    const needed = addDays(to.slice(0, 10), security.releaseWorkingDays);
    if (daysBetween(lapses, needed) > 0) yield task(data, "depositAgain", lapses, { lapses, needed });
  }
  if (partOf(data, "trip") !== null) yield task(data, "tripLonger", null);
  if (isOut) yield task(data, "hirerLink", data.to);
}
