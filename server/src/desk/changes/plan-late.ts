import { figure } from "@setfair/engine";
import { badField } from "../../api/refusal.ts";
import { timesOf } from "../depot-times.ts";
import { instantOf, localOf } from "../local-time.ts";
import { moveStops, moveVoids, planMoves, writeMoves } from "./give-way.ts";
import { nextHires, personOf } from "./next-hires.ts";
import { type Ask, type EffectLine, line, NOTHING, type Person, type Planner, task } from "./types.ts";

type LateAsk = Ask<"late">;
const minuteMs = 60_000;

/** They ring that they will be late: when they come, whom it makes late and what to tell them. */
export const planLate: Planner<"late"> = async (ask) => {
  const { data, change } = ask;
  if (change.eta <= data.to) throw badField("eta", `expected a time after ${data.to}`);
  const eta = instantOf(change.eta, data.depot.timeZone, "eta");
  const moves = await planMoves(ask, change.moves);
  const people = await whomItMakesLate(ask, eta);
  const nameOf = (id: string) => people.find(({ hireId }) => hireId === id)?.reference ?? id;
  return {
    effects: {
      ...NOTHING,
      stops: [...moveStops(moves)],
      voided: [...moveVoids(moves, nameOf)],
      toDo: [task(data, "insurerLate", data.to, { eta: change.eta })],
      people: people.filter(({ hireId }) => !change.moves.some((move) => move.hireId === hireId)),
      says: [
        line(data.nowLocal > data.to ? "coverMayHaveEnded" : "coverMayEnd", { due: data.to }),
        ...lateCharge(ask),
      ],
    },
    write: async (hire) => {
      await writeMoves(hire, ask, moves);
      const booked = await hire.store.bookings.of(data.row.id);
      // a fact, not a wish: the diary shows it where there is room, and the next hire is never double booked
      if (booked !== null && booked.to < eta) await hire.store.bookings.book({ ...booked, to: eta });
      return {};
    },
  };
};

/** Those for whom the vehicle is not ready in time: turned round and explained after it is back. */
async function whomItMakesLate(ask: LateAsk, eta: string): Promise<readonly Person[]> {
  const { store, data } = ask;
  const minutes = data.depotDocument.turnaroundMinutes;
  const ready = new Date(Date.parse(eta) + minutes * minuteMs).toISOString();
  const next = await nextHires(store, data, { from: data.row.to, to: ready });
  const { timeZone } = data.depot;
  return Promise.all(
    next.map(({ row, booking }) =>
      personOf(
        ask,
        row,
        line("nextLate", {
          from: localOf(booking.from, timeZone),
          readyAt: localOf(ready, timeZone),
          minutes: Math.round((Date.parse(ready) - Date.parse(booking.from)) / minuteMs),
          handoverMinutes: timesOf(data.depotDocument).handOverMinutes,
        }),
        true,
      ),
    ),
  );
}

function lateCharge({ data, change }: LateAsk): readonly EffectLine[] {
  const tariff = data.terms?.document.tariff;
  if (tariff === undefined) return [];
  const late = Math.round((Date.parse(`${change.eta}Z`) - Date.parse(`${data.to}Z`)) / minuteMs);
  if (late <= tariff.lateGraceMinutes) return [line("withinGrace", { grace: tariff.lateGraceMinutes })];
  return [
    line("lateCharge", {
      perHour: figure(tariff.latePencePerHour, "pence", "-", {}, "declared"),
      grace: tariff.lateGraceMinutes,
    }),
  ];
}
