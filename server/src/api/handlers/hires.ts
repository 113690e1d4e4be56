import { addDays } from "@setfair/engine";
import type { z } from "zod";
import { NO_READINESS, toJson } from "../../desk/documents.ts";
import { keepEnding } from "../../desk/end-hire.ts";
import { listSummaries } from "../../desk/list-summaries.ts";
import { checkPeriod, instantOf } from "../../desk/local-time.ts";
import { hirePage, pageAfterChange } from "../../desk/page.ts";
import type { HireSearch, HireStage } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import type { hireListQuerySchema } from "../schemas/hires.ts";
import { changeHire } from "./change-hire.ts";
import { chooseVehicle } from "./choose-vehicle.ts";

/** Stages in which what the hire asks for may still change. */
export const OPEN_STAGES: readonly HireStage[] = ["enquiry", "quote", "booked"];

const WHICH: Readonly<Record<HireListQuery["which"], readonly HireStage[]>> = {
  inHand: ["enquiry", "quote", "booked", "handedOver", "onHire"],
  over: ["returned", "settled", "closed"],
  all: ["enquiry", "quote", "booked", "handedOver", "onHire", "returned", "settled", "closed"],
};
const ENDED: readonly HireStage[] = ["lost", "cancelled", "noShow"];

type HireListQuery = z.output<typeof hireListQuerySchema>;

/** What was asked for as the store takes it; a stage asked for by name is shown whatever else was asked. */
function hireFilter(query: HireListQuery, timeZone: string): HireSearch {
  const { stage, which, ended, from, to, after, limit } = query;
  const stages = stage !== undefined ? [stage] : [...WHICH[which], ...(ended === "true" ? ENDED : [])];
  return {
    limit,
    stages,
    ...(after === undefined ? {} : { after }),
    ...(from === undefined ? {} : { touchesFrom: instantOf(`${from}T00:00`, timeZone, "from") }),
    ...(to === undefined ? {} : { touchesTo: instantOf(`${addDays(to, 1)}T00:00`, timeZone, "to") }),
  };
}

export const hireHandlers = {
  async listHires({ context, signed, query }) {
    const { store } = signed;
    const depot = await store.depot.get();
    const words = query.q?.trim() ?? "";
    const filter = hireFilter(query, depot.timeZone);
    const found =
      words === ""
        ? await store.hires.list({ ...filter, order: query.which === "inHand" ? "soonest" : "newest" })
        : await store.hires.search(words, filter);
    return { hires: await listSummaries(store, found.rows, context.now(), depot), next: found.next };
  },

  async newHire({ context, signed, body }) {
    const { store, account } = signed;
    const depot = await store.depot.get();
    const period = checkPeriod(body.from, body.to, depot.timeZone);
    const id = await store.within(async (inner) => {
      const { name, ...contact } = body.customer;
      const customer = await inner.customers.create({ name, document: toJson(contact) });
      const row = await inner.hires.create({ ...period, customerId: customer.id, stage: "enquiry" });
      await inner.hires.putPart(row.id, "party", toJson(body.party), 0, account.id);
      await inner.hires.putPart(row.id, "contact", toJson({ wishes: body.wishes ?? null }), 0, account.id);
      await inner.hires.putPart(row.id, "readiness", toJson(NO_READINESS), 0, account.id);
      if (body.asked !== undefined)
        await inner.hires.putPart(row.id, "asked", toJson(body.asked), 0, account.id);
      await inner.audit.add({ by: account.id, act: "hire.enquired", about: row.id });
      if (body.vehicleId !== undefined)
        await chooseVehicle(inner, row, body.vehicleId, account.id, context.now());
      return row.id;
    });
    return pageAfterChange(store, id, context.now(), account.id);
  },

  readHire: ({ context, signed, params }) => hirePage(signed.store, params.id, context.now()),

  setVehicle: (call) =>
    changeHire(call, OPEN_STAGES, async ({ store, data, by }) => {
      const { vehicleId } = data.row;
      const now = { path: "vehicle", version: vehicleId ?? NO_VERSION, value: { vehicleId } };
      refuseOtherBase(call.query.basedOn, now, call.body);
      await chooseVehicle(store, data.row, call.body.vehicleId, by, call.context.now());
    }),

  setParty: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      await hire.refuseOtherBase("party", call.query.basedOn, call.body);
      await hire.putPart("party", call.body);
      await hire.audit("hire.partySet", { people: call.body.travellers.length, dogs: call.body.dogs });
    }),

  setDrivers: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      await hire.refuseOtherBase("drivers", call.query.basedOn, call.body);
      const ids = call.body.drivers.map(({ id }) => id);
      if (new Set(ids).size !== ids.length) throw badField("drivers", "expected every driver once");
      if (call.body.drivers.filter(({ main }) => main).length > 1)
        throw badField("drivers", "expected one main driver");
      await hire.putPart("drivers", { drivers: call.body.drivers });
      await hire.audit("hire.driversSet", { drivers: ids.length });
    }),

  endHire: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      const { as, reason, code } = call.body;
      const booked = hire.data.row.stage === "booked";
      if (booked === (as === "lost"))
        throw new Refusal("wrongStage", {
          problems: [{ path: "as", expected: booked ? "cancelled or noShow" : "lost" }],
        });
      await hire.store.bookings.release(hire.data.row.id);
      await hire.store.stock.release(hire.data.row.id);
      await keepEnding(hire, { as, code: code ?? null });
      await hire.update({ stage: as });
      await hire.audit(`hire.${as}`, { reason });
    }),
} satisfies Partial<Handlers>;
