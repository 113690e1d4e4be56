import { addDays } from "@setfair/engine";
import { vehiclesFor } from "../../desk/can-take.ts";
import { pinnedOf } from "../../desk/diary-page.ts";
import { partOf } from "../../desk/hire-data.ts";
import { proposeTidy } from "../../desk/tidy-diary.ts";
import { planInTurn } from "../../planner/planner.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { chooseVehicle } from "./choose-vehicle.ts";
import { diarySpan } from "./diary.ts";

/** Further ahead most of the diary is still to be sold. */
const MOST_TIDIED_DAYS = 200;

export const diaryMoveHandlers = {
  moveHire: (call) =>
    changeHire(call, ["enquiry", "quote", "booked"], async ({ store, data, by }) => {
      const { vehicleId, was } = call.body;
      if (data.row.vehicleId !== was) throw new Refusal("stale");
      const party = partOf(data, "party");
      if (party === null) throw new Refusal("notFound");
      const asked = { party, from: data.from, to: data.to, hireId: data.row.id };
      const found = await vehiclesFor(store, data.depot, call.context.now(), asked);
      const target = found.find(({ id }) => id === vehicleId);
      if (target === undefined) throw new Refusal("notFound");
      const refused = target.answer.findings.filter(({ severity }) => severity === "refuse");
      if (refused.some(({ code }) => code === "diary.taken" || code === "diary.offTheRoad"))
        throw new Refusal("taken", { findings: refused });
      if (refused.length > 0) throw new Refusal("refused", { findings: refused });
      await chooseVehicle(store, data.row, vehicleId, by, call.context.now());
    }),

  pinHire: (call) =>
    changeHire(call, ["booked"], async (hire) => {
      const { pinned } = call.body;
      await hire.putPart("diary", { pinned });
      await hire.audit(pinned ? "hire.pinned" : "hire.unpinned");
    }),

  async tidyDiary({ context, signed, query }) {
    const depot = await signed.store.depot.get();
    if (query.to > addDays(query.from, MOST_TIDIED_DAYS))
      throw badField("to", `expected at most ${MOST_TIDIED_DAYS} days after \`from\``);
    const span = diarySpan(query, depot.timeZone);
    return proposeTidy({ store: signed.store, depot, now: context.now(), span, plan: planInTurn });
  },

  /** All vehicles are let go first, so that two hires may change places; then each is taken through the guard. */
  async applyTidy({ context, signed, body }) {
    const { store, account } = signed;
    const moves = [...body.moves].sort((a, b) => (a.to < b.to ? -1 : a.to > b.to ? 1 : 0));
    await store.within(async (inner) => {
      const pinned = await pinnedOf(
        inner,
        moves.map(({ hireId }) => hireId),
      );
      for (const { hireId, from } of moves) {
        const row = await inner.hires.get(hireId);
        if (row === null) throw new Refusal("notFound");
        if (row.vehicleId !== from || row.stage !== "booked" || pinned.has(hireId))
          throw new Refusal("stale", {
            problems: [{ path: row.number, expected: "a booking that is as it was when this was proposed" }],
          });
        await inner.bookings.release(hireId);
      }
      for (const { hireId, to } of moves) {
        const row = await inner.hires.get(hireId);
        if (row !== null) await chooseVehicle(inner, row, to, account.id, context.now());
      }
    });
    return { done: true };
  },
} satisfies Partial<Handlers>;
