import { briefAgain, daysBetween, gbp, hoursBetween, listPlateBound, withRules } from "@setfair/engine";
import { chooseVehicle } from "../../api/handlers/choose-vehicle.ts";
import { badField } from "../../api/refusal.ts";
import type { JsonObject } from "../../store/types.ts";
import { abroadOf, countriesAnswer, routeOf } from "../abroad.ts";
import { situationOf } from "../briefing.ts";
import type { AbroadDocument } from "../documents.ts";
import { keptForecast } from "../forecast.ts";
import { isBeforeKeys } from "../glass.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { instantOf, localOf } from "../local-time.ts";
import { signaturesOf, walkFacts } from "../record-facts.ts";
import { newFindings, readAsIf, refuseWith, stopsIt } from "./as-it-would-be.ts";
import { continueHire } from "./continue-hire.ts";
import { nextHires, personOf } from "./next-hires.ts";
import { offRoadStops, takeOffTheRoad } from "./off-the-road.ts";
import { keepQuote, type PriceAfter, priceKept, settleDifference } from "./price-after.ts";
import { type Ask, line, NOTHING, type Plan, type Planner, task } from "./types.ts";
import { signedBefore, walkedOut } from "./void-signatures.ts";

type VehicleAsk = Ask<"vehicle">;

/**
 * Another vehicle for this hire. Before the keys the hire goes to it; on the road the hire ends with the vehicle
 * that it has and goes on as a second one with the new vehicle, so that both have their two walk-rounds.
 */
export const planVehicle: Planner<"vehicle"> = async (ask) => {
  const { store, data, change } = ask;
  if (data.vehicle === null || change.vehicleId === data.row.vehicleId)
    throw badField("vehicleId", "expected another vehicle than the one it has");
  if ((await store.vehicles.versions(change.vehicleId)).length === 0)
    throw badField("vehicleId", "expected a vehicle of this depot");
  const isOut = !isBeforeKeys(data.row.stage);
  const after = await readAsIf(ask, {
    vehicleId: change.vehicleId,
    registration: "",
    ...(isOut ? { from: data.now } : {}),
  });
  const findings = newFindings(data, after);
  const price = isOut ? priceOfRest(data, after) : priceKept(data, after);
  const bound = withRules(data.ruleBook, () => plateBound(data, after, isOut));
  return {
    effects: {
      ...NOTHING,
      voided: bound.voided,
      toDo: [...bound.toDo, ...settleDifference(data, price.money, data.from)],
      findings: [...findings],
      stops: [...(await offRoadStops(ask))],
      money: price.money,
      brief: briefEffect(data, after),
      people: [...(await peopleOf(ask))],
      says: [
        ...(isOut ? [line("twoHires"), line("depositStays")] : []),
        ...(isOut && (await store.stock.holdsOf([data.row.id])).length > 0 ? [line("thingsGoAlong")] : []),
        line(isOut ? "guideNewLink" : "guideChanges"),
        ...((price.money?.ours.pence ?? 0) > 0 ? [line("oursToCarry")] : []),
        ...hoursToCrossing(data),
      ],
    },
    write: async (hire) => {
      if (stopsIt(findings)) throw refuseWith("taken", findings);
      if (isOut) return continueHire(hire, ask, restAbroad(data));
      return swapBefore(hire, ask, price);
    },
  };
};

/** How long there is before the next crossing leaves. */
function hoursToCrossing(data: HireData) {
  const next = crossingsAhead(data)
    .flatMap(({ leavesAt }) => leavesAt ?? [])
    .sort()[0];
  if (next === undefined) return [];
  const hours = Math.floor(hoursBetween(data.nowLocal, next, data.depot.timeZone));
  return [line("hoursToCrossing", { at: next, hours })];
}

async function swapBefore(
  hire: Parameters<Plan["write"]>[0],
  ask: VehicleAsk,
  price: PriceAfter,
): Promise<JsonObject> {
  const { data, change, now } = ask;
  await chooseVehicle(hire.store, data.row, change.vehicleId, hire.by, now);
  if (partOf(data, "abroad") !== null) await hire.putPart("abroad", restAbroad(data));
  await keepQuote(hire, price.quote);
  await takeOffTheRoad(hire, ask);
  return {
    voidedRecords: [
      ...new Set([...walkedOut(data), ...signedBefore(data, "agreement", "condition", "briefing")]),
    ],
    voidedOverrides: data.overrides.map(({ id }) => id),
  };
}

/** What was got and seen for the plate before is not carried over; countries and crossings are. */
function restAbroad(data: HireData): AbroadDocument {
  const { through, crossings, noCrossing, got, avoided, overhang } = abroadOf(data);
  return {
    through,
    crossings,
    noCrossing,
    overhang,
    papers: {},
    kitAboard: [],
    got: got.filter((id) => id.startsWith("kit.")),
    ...(avoided === undefined ? {} : { avoided }),
    plateShowsUk: false,
  };
}

function plateBound(
  data: HireData,
  after: HireData,
  isOut: boolean,
): Pick<Plan["effects"], "voided" | "toDo"> {
  const [old, fresh] = [data.vehicle?.document.description, after.vehicle?.document.description];
  if (old === undefined || fresh === undefined) return { voided: [], toDo: [] };
  const said = abroadOf(data);
  const left = { ...after, parts: { ...after.parts } };
  // without a trip the countries and crossings that the desk named are all that is known
  const leaves = said.through.length > 0 || said.crossings.length > 0;
  const route =
    routeOf(data) ??
    (leaves ? [{ country: "", enter: data.from.slice(0, 10), leave: data.to.slice(0, 10) }] : []);
  const abroad = route.filter(({ country }) => country !== data.depotDocument.country);
  const firstAbroad =
    abroad.map(({ enter }) => (isOut && enter < data.today ? data.today : enter)).sort()[0] ?? null;
  const party = partOf(data, "party");
  const bound = listPlateBound({
    oldVehicle: old,
    newVehicle: fresh,
    today: data.today,
    keysAt: isOut || data.from < data.nowLocal ? data.nowLocal : data.from,
    signed: signaturesOf(data.records).flatMap(({ purpose, direction }) =>
      direction === "back" ? [] : [purpose],
    ),
    walkedOut: !isOut && walkFacts(data.records, "out").started,
    hasCertificate: said.papers.certificate !== undefined || said.papers.originalDocument === true,
    firstAbroad,
    oldTasks: countriesAnswer(data)?.result.tasks ?? [],
    newTasks: countriesAnswer(left)?.result.tasks ?? [],
    crossings: crossingsAhead(data),
    kitAboard: said.kitAboard.length,
    children: party?.travellers.filter(({ kind }) => kind === "child").length ?? 0,
    hasLoadPlan: partOf(data, "load") !== null,
    hasTrip: partOf(data, "trip") !== null,
    overrides: data.overrides.length,
  });
  const first = isOut ? [task(data, "walkBack", data.nowLocal, { registration: old.registration })] : [];
  return {
    voided: bound.voided.map(({ code, facts }) => line(code, { ...facts })),
    toDo: [...first, ...bound.toDo.map(({ facts, ...each }) => ({ ...each, facts: { ...facts } }))],
  };
}

type Ahead = Parameters<typeof listPlateBound>[0]["crossings"][number];

/** Crossings that have not left yet, with the depot's own civil time where the port's is known. */
function crossingsAhead(data: HireData): readonly Ahead[] {
  const { timeZone } = data.depot;
  return abroadOf(data).crossings.flatMap(({ kind, on, at, zone }): Ahead[] => {
    if (at === undefined) return on >= data.today ? [{ kind, on }] : [];
    const leavesAt = localOf(instantOf(`${on}T${at}`, zone ?? timeZone, "crossings"), timeZone);
    const port = zone === undefined || zone === timeZone ? {} : { zone };
    return leavesAt >= data.nowLocal ? [{ kind, on, at, leavesAt, ...port }] : [];
  });
}

function briefEffect(data: HireData, after: HireData): Plan["effects"]["brief"] {
  const [old, fresh] = [data.vehicle?.document.description, after.vehicle?.document.description];
  const party = partOf(data, "party");
  if (old === undefined || fresh === undefined || party === null) return null;
  const { again, same, minutes } = briefAgain(
    old,
    fresh,
    situationOf(data, party, keptForecast(data)?.answer ?? null),
  );
  return {
    again: again.map(({ card, why }) => ({ id: card.id, why })),
    same: same.length,
    minutes: { ...minutes, inputs: { ...minutes.inputs } },
  };
}

/** What the rest of the days would have cost more is ours; the hirer pays nothing, whatever the vehicle. */
function priceOfRest(data: HireData, after: HireData): PriceAfter {
  const whole = { ...after, from: data.from, row: { ...after.row, from: data.row.from } };
  const { money } = priceKept(data, whole);
  if (money === null) return { money, quote: null };
  const nights = Math.max(1, daysBetween(data.from.slice(0, 10), data.to.slice(0, 10)));
  const rest = Math.max(0, daysBetween(data.today, data.to.slice(0, 10)));
  const ours = gbp(Math.round((money.ours.pence * rest) / nights));
  return { money: { before: money.before, after: money.before, hirer: gbp(0), ours }, quote: null };
}

/** Other hires of the vehicle that is to stay off the road. */
async function peopleOf(ask: VehicleAsk) {
  const { store, data, change } = ask;
  if (change.offTheRoadTo === null) return [];
  const to = instantOf(change.offTheRoadTo, data.depot.timeZone, "offTheRoadTo");
  const next = await nextHires(store, data, { from: data.now, to });
  return Promise.all(
    next.map(({ row }) =>
      personOf(ask, row, line("vehicleOffRoad", { from: localOf(row.from, data.depot.timeZone) }), true),
    ),
  );
}
