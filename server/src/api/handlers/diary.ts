import { addDays } from "@setfair/engine";
import { vehiclesFor } from "../../desk/can-take.ts";
import { readDiary } from "../../desk/diary-page.ts";
import { plainFinding } from "../../desk/glass.ts";
import { partOf, readHireData } from "../../desk/hire-data.ts";
import { checkPeriod, instantOf, localOf } from "../../desk/local-time.ts";
import { priceOf } from "../../desk/price-of.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

const MOST_DAYS = 800;

/** The asked days with the instants of their midnights; refused where they run backwards or are too many. */
export function diarySpan(query: { readonly from: string; readonly to: string }, timeZone: string) {
  if (query.to < query.from) throw badField("to", "expected a day not before `from`");
  if (query.to > addDays(query.from, MOST_DAYS))
    throw badField("to", `expected at most ${MOST_DAYS} days after \`from\``);
  return {
    ...query,
    start: instantOf(`${query.from}T00:00`, timeZone, "from"),
    end: instantOf(`${addDays(query.to, 1)}T00:00`, timeZone, "to"),
  };
}

export const diaryHandlers = {
  async diary({ context, signed, query }) {
    const depot = await signed.store.depot.get();
    return readDiary(signed.store, depot, context.now(), diarySpan(query, depot.timeZone));
  },

  async hireVehicles({ context, signed, params }) {
    const { store } = signed;
    const data = await readHireData(store, params.id, context.now());
    const party = partOf(data, "party");
    if (party === null) throw new Refusal("notFound");
    const asked = { party, from: data.from, to: data.to };
    const found = await vehiclesFor(store, data.depot, context.now(), { ...asked, hireId: data.row.id });
    const prices = new Map<string, Awaited<ReturnType<typeof priceOf>>>();
    for (const { document } of found) {
      const { vehicleClass } = document;
      if (!prices.has(vehicleClass))
        prices.set(vehicleClass, await priceOf(store, vehicleClass, asked, data.today));
    }
    return {
      current: data.row.vehicleId,
      currentClass: data.vehicle?.document.vehicleClass ?? null,
      quoted: partOf(data, "quote")?.answer.result?.total ?? null,
      pinned: partOf(data, "diary")?.pinned ?? false,
      classes: Object.fromEntries(found.map(({ id, document }) => [id, document.vehicleClass])),
      vehicles: found
        .map(({ id, document, answer }) => ({
          id,
          name: document.description.name,
          registration: document.description.registration,
          possible: answer.possible,
          findings: answer.findings.map(plainFinding),
          nearestChanges: answer.nearestChanges.map((change) => ({ ...change })),
          price: prices.get(document.vehicleClass) ?? null,
        }))
        .sort((a, b) => Number(b.possible) - Number(a.possible)),
    };
  },

  async addBlock({ signed, params, body }) {
    const { store, account } = signed;
    const { timeZone } = await store.depot.get();
    const period = checkPeriod(body.from, body.to, timeZone);
    if ((await store.vehicles.versions(params.id)).length === 0) throw new Refusal("notFound");
    const { kind, note } = body;
    const added = await store.within(async (inner) => {
      const answer = await inner.blocks.add({ vehicleId: params.id, kind, note, ...period, by: account.id });
      if (!answer.ok)
        throw new Refusal("taken", {
          problems: [{ path: "from", expected: "days on which nothing holds this vehicle" }],
        });
      const document = { blockId: answer.block.id, kind, from: body.from, to: body.to };
      await inner.audit.add({ by: account.id, act: "vehicle.blocked", about: params.id, document });
      return answer.block;
    });
    return {
      id: added.id,
      vehicleId: added.vehicleId,
      kind,
      note,
      from: localOf(added.from, timeZone),
      to: localOf(added.to, timeZone),
    };
  },

  async removeBlock({ signed, params }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const removed = await inner.blocks.remove(params.id);
      if (removed === null) throw new Refusal("notFound");
      const document = { blockId: removed.id, kind: removed.kind, from: removed.from, to: removed.to };
      await inner.audit.add({ by: account.id, act: "vehicle.unblocked", about: removed.vehicleId, document });
    });
    return { done: true };
  },
} satisfies Partial<Handlers>;
