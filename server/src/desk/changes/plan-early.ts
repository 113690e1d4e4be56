import { daysBetween, figure, gbp, refundNights } from "@setfair/engine";
import { badField, Refusal } from "../../api/refusal.ts";
import { isBeforeKeys } from "../glass.ts";
import { partOf } from "../hire-data.ts";
import { instantOf, localOf } from "../local-time.ts";
import { holdStock } from "../stock.ts";
import { type EffectLine, line, NOTHING, type Planner, task } from "./types.ts";
import { signedBefore } from "./void-signatures.ts";

/** Back before the agreed time: the vehicle is free sooner; what goes back is said by a person. */
export const planEarly: Planner<"early"> = async ({ data, change }) => {
  const isOut = !isBeforeKeys(data.row.stage);
  const least = isOut && data.nowLocal > data.from ? data.nowLocal : data.from;
  if (change.to <= least || change.to >= data.to)
    throw badField("to", `expected a time after ${least} and before ${data.to}`);
  const to = instantOf(change.to, data.depot.timeZone, "to");
  const price = partOf(data, "quote")?.answer.result?.total ?? null;
  if (change.backPence > (price?.pence ?? 0))
    throw badField("backPence", `expected at most what the hire costs, ${price?.pence ?? 0} pence`);
  const ready = new Date(Date.parse(to) + data.depotDocument.turnaroundMinutes * 60_000).toISOString();
  const back = figure(change.backPence, "pence", "-", {}, "declared");
  return {
    effects: {
      ...NOTHING,
      voided: isOut || signedBefore(data, "agreement").length === 0 ? [] : [line("agreementDays")],
      toDo: change.backPence > 0 ? [task(data, "refund", null, { amount: back })] : [],
      money:
        price === null
          ? null
          : {
              before: price,
              after: price,
              hirer: gbp(change.backPence === 0 ? 0 : -change.backPence),
              ours: gbp(0),
            },
      says: [
        line("freeFrom", { at: localOf(ready, data.depot.timeZone) }),
        ...unused(data, change.to),
        line("walkBackAtNewTime", { at: change.to }),
      ],
    },
    write: async (hire) => {
      const booked = await hire.store.bookings.of(data.row.id);
      if (booked !== null && !(await hire.store.bookings.book({ ...booked, to })).ok)
        throw new Refusal("taken", {
          problems: [{ path: "to", expected: "days on which the vehicle is its own" }],
        });
      await holdStock(hire.store, data, { from: data.row.from, to });
      await hire.update({ to });
      return isOut ? {} : { voidedRecords: [...signedBefore(data, "agreement")] };
    },
  };
};

/** Nights that are not used and what they cost; the terms name no refund, so a person decides. */
function unused(data: Parameters<typeof partOf>[0], to: string): readonly EffectLine[] {
  const quote = partOf(data, "quote")?.answer.result ?? null;
  const nights = Math.max(0, daysBetween(to.slice(0, 10), data.to.slice(0, 10)));
  if (quote === null || nights === 0) return [];
  const { worth } = refundNights(quote, Math.min(nights, quote.nights.value), "unknown");
  return [
    line("nightsUnused", {
      nights,
      worth: figure(worth.pence, "pence", "-", { nights, of: quote.nights.value }, "computed", "practice"),
    }),
  ];
}
