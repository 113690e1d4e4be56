import { BadInput, findTicketProblems, parseVehicle, type VehicleDescription } from "@setfair/engine";
import type { z } from "zod";
import type { AppContext } from "../../context.ts";
import { answerEnquiry } from "../../desk/answer-enquiry.ts";
import { asDocument, toJson, type VehicleDocument } from "../../desk/documents.ts";
import { termsOf } from "../../desk/hire-data.ts";
import { checkPeriod, dateOf, localOf } from "../../desk/local-time.ts";
import { type FleetView, vehiclePage, vehicleSummary } from "../../desk/vehicle-page.ts";
import { vehicleVersions } from "../../desk/vehicle-versions.ts";
import type { Store } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers, Signed } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import type { putVehicleSchema } from "../schemas/vehicles.ts";

async function viewOf(context: AppContext, store: Store): Promise<FleetView> {
  const { timeZone } = await store.depot.get();
  return { timeZone, today: dateOf(localOf(context.now().toISOString(), timeZone)) };
}

async function pageOf(context: AppContext, store: Store, id: string) {
  const view = await viewOf(context, store);
  const version =
    (await store.vehicles.on(id, view.today)) ?? (await store.vehicles.versions(id)).at(-1) ?? null;
  if (version === null) throw new Refusal("notFound");
  return vehiclePage(store, version, view);
}

/** The class that the depot's terms price first. */
async function firstClass(context: AppContext, store: Store): Promise<string | undefined> {
  const terms = await termsOf(store, null, (await viewOf(context, store)).today);
  return Object.keys(terms?.document.seasons[0]?.nightPence ?? {})[0];
}

function parseDescription(value: unknown): VehicleDescription {
  try {
    return parseVehicle(value);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    throw new BadInput(
      error.problems.map(({ path, expected }) => ({ path: `description.${path}`, expected })),
    );
  }
}

/** Writes a version of a description; a registration number serves one vehicle of the depot at a time. */
async function describe(
  context: AppContext,
  { store, account }: Signed,
  body: z.output<typeof putVehicleSchema>,
  isNew: boolean,
  basedOn?: string,
): Promise<void> {
  const description = parseDescription(body.description);
  const { id, registration, validFrom } = description;
  const standardClass = (await firstClass(context, store)) ?? description.bodyStyle;
  await store.within(async (inner) => {
    const holder = await inner.plates.holder({ registration, exceptVehicleId: id, from: validFrom });
    await inner.vehicles.hold(id);
    const newest = await inner.vehicles.newest(id);
    const now = { version: newest?.versionId ?? NO_VERSION, value: newest?.document.description ?? {} };
    refuseOtherBase(basedOn, { path: "description", ...now }, description);
    const before = (await inner.vehicles.versions(id)).at(-1);
    if (isNew && before !== undefined)
      throw badField("description.id", `expected an id of its own; there is a vehicle ${id}`);
    if (holder !== null)
      throw badField(
        "description.registration",
        `expected a registration number of its own; ${await nameOf(inner, holder)} has ${registration}`,
      );
    const kept = before === undefined ? null : asDocument<VehicleDocument>(before.document);
    const document: VehicleDocument = {
      description,
      dueDates: body.dueDates ?? kept?.dueDates ?? [],
      maxDogs: body.maxDogs ?? kept?.maxDogs ?? 0,
      vehicleClass: body.vehicleClass ?? kept?.vehicleClass ?? standardClass,
    };
    const version = await inner.vehicles.put({ of: id, validFrom, document: toJson(document) });
    await inner.audit.add({
      by: account.id,
      act: "vehicle.described",
      about: id,
      document: { versionId: version.versionId },
    });
  });
}

async function nameOf(store: Store, id: string): Promise<string> {
  const last = (await store.vehicles.versions(id)).at(-1);
  return last === undefined ? id : asDocument<VehicleDocument>(last.document).description.name;
}

export const vehicleHandlers = {
  async listVehicles({ context, signed }) {
    const view = await viewOf(context, signed.store);
    const versions = await signed.store.vehicles.allOn(view.today);
    const vehicles = [];
    for (const version of versions) vehicles.push(await vehicleSummary(signed.store, version, view));
    return { vehicles: vehicles.sort((a, b) => a.name.localeCompare(b.name, "en")) };
  },

  readVehicle: ({ context, signed, params }) => pageOf(context, signed.store, params.id),

  /** A new version that holds from its own date; the ones before stay, and so does what was signed under them. */
  async putVehicle({ context, signed, params, query, body }) {
    if (body.description.id !== params.id)
      throw badField("description.id", `expected ${params.id}, as in the address`);
    await describe(context, signed, body, false, query.basedOn);
    return pageOf(context, signed.store, params.id);
  },

  async createVehicle({ context, signed, body }) {
    await describe(context, signed, body, true);
    return pageOf(context, signed.store, body.description.id);
  },

  async listVersions({ context, signed, params }) {
    const { today } = await viewOf(context, signed.store);
    const answer = await vehicleVersions(signed.store, params.id, today);
    if (answer.versions.length === 0) throw new Refusal("notFound");
    return answer;
  },

  async readVersion({ signed, params }) {
    const version = await signed.store.vehicles.byId(params.versionId);
    if (version === null || version.of !== params.id) throw new Refusal("notFound");
    const { description } = asDocument<VehicleDocument>(version.document);
    return { versionId: version.versionId, validFrom: version.validFrom, description };
  },

  /** The ticket must fit the vehicle as described on the day of the weighing; a day to come is refused. */
  async addTicket({ context, signed, params, body }) {
    const { store, account } = signed;
    const { today } = await viewOf(context, store);
    if (body.weighedOn > today) throw badField("weighedOn", `expected a day up to today, ${today}`);
    const version =
      (await store.vehicles.on(params.id, body.weighedOn)) ?? (await store.vehicles.versions(params.id))[0];
    if (version === undefined) throw new Refusal("notFound");
    const { description } = asDocument<VehicleDocument>(version.document);
    const problems = findTicketProblems(description, body);
    if (problems.length > 0) throw new Refusal("badInput", { problems });
    await store.within(async (inner) => {
      const { id } = await inner.tickets.add({
        vehicleId: params.id,
        weighedOn: body.weighedOn,
        document: toJson(body),
        by: account.id,
      });
      const document = { ticketId: id };
      await inner.audit.add({ by: account.id, act: "vehicle.weighed", about: params.id, document });
    });
    return pageOf(context, store, params.id);
  },

  async withdrawTicket({ context, signed, params }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      if (!(await inner.tickets.withdraw(params.id, params.ticketId))) throw new Refusal("notFound");
      const document = { ticketId: params.ticketId };
      await inner.audit.add({ by: account.id, act: "vehicle.ticketWithdrawn", about: params.id, document });
    });
    return pageOf(context, store, params.id);
  },

  /** Each vehicle: possible, or why not and what would have to change. */
  async availability({ context, signed, body }) {
    const { store } = signed;
    const depot = await store.depot.get();
    checkPeriod(body.from, body.to, depot.timeZone);
    const { asked, ...rest } = body;
    const answer = await answerEnquiry(store, depot, context.now(), {
      ...rest,
      ...(asked === undefined ? {} : { asked }),
    });
    return { ...answer, vehicles: answer.vehicles.map(({ vehicleClass: _, ...line }) => line) };
  },
} satisfies Partial<Handlers>;
