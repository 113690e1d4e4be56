import { figure, gbp } from "@setfair/engine";
import { endingCharge, keepEnding } from "../end-hire.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { type EffectTask, line, NOTHING, type Plan, type Planner, task } from "./types.ts";

const pence = (value: number) => figure(value, "pence", "-", {}, "computed");

/** Nobody came: the vehicle is free, and what is kept follows the scale of the quote that was accepted. */
export const planNoShow: Planner<"noShow"> = async ({ data, change }) => {
  const { money, toDo } = charge(data);
  return {
    effects: {
      ...NOTHING,
      stops: data.now < data.row.from ? [line("notYetDue", { from: data.from })] : [],
      toDo: [task(data, "ringNoShow", data.nowLocal), ...toDo],
      money,
      says: [line("freeAtOnce"), line("keepOnlyLoss")],
    },
    write: async (hire) => {
      await hire.store.bookings.release(data.row.id);
      await hire.store.stock.release(data.row.id);
      await keepEnding(hire, { as: "noShow", code: null });
      await hire.update({ stage: "noShow" });
      await hire.audit("hire.noShow", { reason: change.reason });
      return {};
    },
  };
};

function charge(data: HireData): {
  readonly money: Plan["effects"]["money"];
  readonly toDo: readonly EffectTask[];
} {
  const ending = endingCharge(data);
  const total = partOf(data, "quote")?.answer.result?.total;
  if (ending === null || total === undefined) return { money: null, toDo: [] };
  const { keep, refund, owed } = ending;
  return {
    money: { before: total, after: keep, hirer: gbp(owed.pence - refund.pence), ours: gbp(0) },
    toDo: refund.pence > 0 ? [task(data, "refund", null, { amount: pence(refund.pence) })] : [],
  };
}
