import type { Driver } from "@setfair/engine";
import { badField } from "../../api/refusal.ts";
import { driversOf, type HireData, partOf } from "../hire-data.ts";
import { newFindings, refuseWith, stopsIt, withPart } from "./as-it-would-be.ts";
import { keepQuote, priceForHirer, settleDifference } from "./price-after.ts";
import { type EffectTask, line, NOTHING, type Planner, task } from "./types.ts";
import { signedBefore } from "./void-signatures.ts";

/** Another person, or a second dog, stands at the counter: belts, berths, load, child seats, price. */
export const planParty: Planner<"party"> = async ({ data, change }) => {
  const before = partOf(data, "party");
  const after = withPart(data, "party", change.party);
  const findings = newFindings(data, after);
  const price = priceForHirer(data, after);
  const signed = signedBefore(data, "agreement");
  return {
    effects: {
      ...NOTHING,
      findings: [...findings],
      voided: signed.length === 0 ? [] : [line("agreementPeople")],
      toDo: [...tasksOf(data, after), ...settleDifference(data, price.money, data.from)],
      money: price.money,
      says: [
        line("partyNow", {
          people: change.party.travellers.length,
          before: before?.travellers.length ?? 0,
          dogs: change.party.dogs,
        }),
      ],
    },
    write: async (hire) => {
      if (stopsIt(findings)) throw refuseWith("refused", findings);
      await hire.putPart("party", change.party);
      await keepQuote(hire, price.quote);
      return { voidedRecords: [...signed] };
    },
  };
};

function* tasksOf(data: HireData, after: HireData): Iterable<EffectTask> {
  const party = partOf(after, "party");
  const load = partOf(data, "load");
  const seated = new Set(load?.seats.map(({ travellerId }) => travellerId) ?? []);
  const unseated = party?.travellers.filter(({ id }) => !seated.has(id)) ?? [];
  if (load !== null && unseated.length > 0)
    yield task(data, "seatInLoad", data.from, { count: unseated.length });
  const children = (of: HireData) =>
    partOf(of, "party")?.travellers.filter(({ kind }) => kind === "child") ?? [];
  const more = children(after).length - children(data).length;
  if (more > 0) yield task(data, "childSeats", data.from, { count: children(after).length });
  if (partOf(data, "trip") !== null) yield task(data, "forecastAgain", null);
}

/** A named driver is not there: removed, priced again, licence and insurance read again for those who are. */
export const planDriverAbsent: Planner<"driverAbsent"> = async ({ data, change }) => {
  const drivers = driversOf(data);
  const absent = drivers.find(({ id }) => id === change.driverId);
  if (absent === undefined) throw badField("driverId", "expected a named driver of this hire");
  const left = withMain(drivers.filter(({ id }) => id !== absent.id));
  const after = withPart(data, "drivers", { drivers: left });
  const findings = left.length === 0 ? [] : newFindings(data, after);
  const price = left.length === 0 ? { money: null, quote: null } : priceForHirer(data, after);
  const signed = signedBefore(data, "agreement");
  return {
    effects: {
      ...NOTHING,
      findings: [...findings],
      stops: left.length === 0 ? [line("noDriverLeft")] : [],
      voided: signed.length === 0 ? [] : [line("agreementDrivers", { name: absent.name })],
      toDo: [
        task(data, "insurerDriver", data.from, { name: absent.name }),
        ...settleDifference(data, price.money, data.from),
      ],
      money: price.money,
      says: [line("driverMayNot", { name: absent.name })],
    },
    write: async (hire) => {
      if (stopsIt(findings)) throw refuseWith("refused", findings);
      await hire.putPart("drivers", { drivers: left });
      await keepQuote(hire, price.quote);
      return { voidedRecords: [...signed] };
    },
  };
};

/** Somebody has to be the main driver: the first who is there. */
const withMain = (drivers: readonly Driver[]): readonly Driver[] =>
  drivers.some(({ main }) => main)
    ? drivers
    : drivers.map((driver, k) => (k === 0 ? { ...driver, main: true } : driver));
