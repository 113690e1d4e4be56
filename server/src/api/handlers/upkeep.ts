import { nextDue } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument, toJson, type VehicleDocument } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { readTurnarounds } from "../../desk/turnarounds.ts";
import { openDefects } from "../../desk/upkeep.ts";
import { dueLines, vehicleUpkeepPage } from "../../desk/upkeep-page.ts";
import { type DefectDocument, NO_UPKEEP, readUpkeep } from "../../desk/vehicle-upkeep.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

/** Due within this many days where nobody asks for another number. */
const USUAL_DAYS = 60;

async function todayOf(context: AppContext, store: Store): Promise<string> {
  const { timeZone } = await store.depot.get();
  return dateOf(localOf(context.now().toISOString(), timeZone));
}

async function pageOf(context: AppContext, store: Store, id: string) {
  const today = await todayOf(context, store);
  const version = (await store.vehicles.on(id, today)) ?? (await store.vehicles.versions(id)).at(-1) ?? null;
  if (version === null) throw new Refusal("notFound");
  return vehicleUpkeepPage(store, version, today);
}

async function requireVehicle(store: Store, id: string): Promise<void> {
  if ((await store.vehicles.versions(id)).length === 0) throw new Refusal("notFound");
}

export const upkeepHandlers = {
  async fleetDue({ context, signed, query }) {
    const { store } = signed;
    const today = await todayOf(context, store);
    const versions = await store.vehicles.allOn(today);
    const all = await readUpkeep(
      store,
      versions.map(({ of }) => of),
    );
    const within = query.days ?? USUAL_DAYS;
    const vehicles = versions.map(({ of, document }) => {
      const { description } = asDocument<VehicleDocument>(document);
      const upkeep = all.get(of) ?? NO_UPKEEP;
      const open = openDefects(upkeep.defects, []);
      const count = (kind: string) => open.filter((defect) => defect.class === kind).length;
      return {
        vehicle: { id: of, name: description.name, registration: description.registration },
        due: dueLines(asDocument<VehicleDocument>(document), upkeep, today).filter(
          ({ state, days }) => state === "over" || state === "missing" || (days !== null && days <= within),
        ),
        openDefects: { safety: count("safety"), comfort: count("comfort") },
      };
    });
    return { today, vehicles: vehicles.sort((a, b) => a.vehicle.name.localeCompare(b.vehicle.name, "en")) };
  },

  readUpkeep: ({ context, signed, params }) => pageOf(context, signed.store, params.id),

  async addUpkeep({ context, signed, params, body }) {
    const { store, account } = signed;
    await requireVehicle(store, params.id);
    if (body.on > (await todayOf(context, store))) throw badField("on", "expected a day that is not ahead");
    const { kind, on, ...rest } = body;
    const document = body.kind === "done" ? doneDocument(body) : rest;
    await store.within(async (inner) => {
      const entry = await inner.upkeep.add({
        vehicleId: params.id,
        kind,
        on,
        document: toJson(document),
        by: account.id,
      });
      await inner.audit.add({
        by: account.id,
        act: "vehicle.upkeep",
        about: params.id,
        document: { entryId: entry.id, kind },
      });
    });
    return pageOf(context, store, params.id);
  },

  async addDefect({ context, signed, params, body }) {
    const { store, account } = signed;
    await requireVehicle(store, params.id);
    const hireId = body.hireId ?? null;
    if (hireId !== null && (await store.hires.get(hireId)) === null) {
      throw badField("hireId", "expected a hire of this depot");
    }
    const document: DefectDocument = {
      what: body.what,
      where: body.where,
      notedBy: account.name,
      photograph: body.photograph ?? null,
    };
    await store.within(async (inner) => {
      const defect = await inner.defects.add({
        vehicleId: params.id,
        hireId,
        class: body.class,
        document: toJson(document),
        by: account.id,
      });
      await inner.audit.add({
        by: account.id,
        act: "vehicle.defectNoted",
        about: params.id,
        document: { defectId: defect.id, class: body.class },
      });
    });
    return pageOf(context, store, params.id);
  },

  async closeDefect({ context, signed, params, body }) {
    const { store, account } = signed;
    const defect = await store.defects.get(params.id);
    if (defect === null) throw new Refusal("notFound");
    await store.within(async (inner) => {
      if (!(await inner.defects.close(params.id, { by: account.id, how: body.how }))) return;
      await inner.audit.add({
        by: account.id,
        act: "vehicle.defectClosed",
        about: defect.vehicleId,
        document: { defectId: params.id },
      });
    });
    return pageOf(context, store, defect.vehicleId);
  },

  async turnarounds({ context, signed }) {
    const depot = await signed.store.depot.get();
    const date = dateOf(localOf(context.now().toISOString(), depot.timeZone));
    return { date, turnarounds: await readTurnarounds(signed.store, depot, context.now()) };
  },
} satisfies Partial<Handlers>;

interface Done {
  readonly duty: Parameters<typeof nextDue>[0];
  readonly on: string;
  readonly who: string;
  readonly reference?: string | null | undefined;
  readonly km?: number | null | undefined;
  readonly dueOn?: string | null | undefined;
}

/** What its papers say, else the interval of the duty, decides when it falls due again. */
function doneDocument({ duty, on, who, reference, km, dueOn }: Done) {
  const next = nextDue(duty, on, km ?? null);
  return {
    duty,
    who,
    reference: reference ?? null,
    km: km ?? null,
    dueOn: dueOn ?? next?.dueOn ?? null,
    dueKm: next?.dueKm ?? null,
  };
}
