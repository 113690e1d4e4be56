import { noticeClock, withRules } from "@setfair/engine";
import { badField } from "../../api/refusal.ts";
import { driversOf, readHireData } from "../hire-data.ts";
import { instantOf, localOf } from "../local-time.ts";
import { hireThen, vehicleThen } from "./find-driver-then.ts";
import { personOf } from "./next-hires.ts";
import { type Ask, line, NOTHING, type Plan, type Planner, task } from "./types.ts";

/** A fine or notice came: who had the vehicle at that minute, and until when the papers may be given. */
export const planNotice: Planner<"notice"> = async (ask) => {
  const { store, data, change } = ask;
  const { timeZone } = data.depot;
  const at = instantOf(change.at, timeZone, "at");
  if (change.givenOn > data.today) throw badField("givenOn", `expected a day up to ${data.today}`);
  if (change.at.slice(0, 10) > change.givenOn)
    throw badField("at", "expected a time up to the day on which the notice was given");
  const vehicleId = await vehicleThen(store, change.registration, at, timeZone);
  const found = vehicleId === null ? null : await hireThen(store, vehicleId, at);
  if (found === null) {
    const code = vehicleId === null ? "noSuchPlate" : "withUsThen";
    return {
      effects: { ...NOTHING, stops: [line(code, { registration: change.registration, at: change.at })] },
      write: async () => ({}),
    };
  }
  return foundPlan(ask, found);
};

async function foundPlan(
  ask: Ask<"notice">,
  found: NonNullable<Awaited<ReturnType<typeof hireThen>>>,
): Promise<Plan> {
  const { store, data, change, now } = ask;
  const other = await readHireData(store, found.row.id, now);
  const asked = { kind: change.notice, givenOn: change.givenOn, today: data.today };
  const clock = withRules(data.ruleBook, () => noticeClock(asked));
  const drivers = driversOf(other).map(({ name }) => name);
  const person = await personOf(
    ask,
    found.row,
    line("hadTheKeys", {
      out: localOf(found.out, data.depot.timeZone),
      drivers: drivers.length,
      names: drivers.join(", "),
    }),
  );
  return {
    about: found.row.id,
    effects: {
      ...NOTHING,
      toDo: [
        task(data, "answerNotice", clock.lastDay, { reference: change.reference }),
        task(data, "tellHirer", null, { customer: found.row.customerName }),
      ],
      people: [person],
      says: [
        clock.days === null
          ? line("noClock")
          : line("clock", { days: { ...clock.days, inputs: { ...clock.days.inputs } } }),
        ...(drivers.length > 1 ? [line("severalDrivers")] : []),
        line("twoPapers"),
      ],
    },
    write: async () => ({}),
  };
}
