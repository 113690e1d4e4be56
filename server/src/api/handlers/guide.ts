import { checkRecord } from "@setfair/records";
import { hirerOf, makeHirerLink } from "../../auth/hirer-links.ts";
import type { AppContext } from "../../context.ts";
import { briefingFor } from "../../desk/briefing.ts";
import { asDocument, type DepotDocument } from "../../desk/documents.ts";
import { forecastInput, forecastOf } from "../../desk/forecast.ts";
import { faultsOf } from "../../desk/help.ts";
import { partOf, readHireData } from "../../desk/hire-data.ts";
import { panelReadings } from "../../desk/record-facts.ts";
import { requireStage } from "../../desk/require-stage.ts";
import type { LinkAnswer } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { appendRecords } from "./append-records.ts";

/** The hire that a link opens; unknown, expired and ended links all look alike. */
async function linkOf(context: AppContext, token: string): Promise<LinkAnswer> {
  const link = token.includes("\0") ? null : await hirerOf(context.database, token);
  if (link === null) throw new Refusal("linkUnusable");
  return link;
}

const DAYS_AFTER = 14;

export const guideHandlers = {
  async makeHirerLink({ context, signed, params }) {
    const { store, account } = signed;
    const data = await readHireData(store, params.id, context.now());
    // after the return it leads to the statement
    requireStage(data, "quote", "booked", "handedOver", "onHire", "returned", "settled", "closed");
    const last = Math.max(Date.parse(data.row.to), context.now().getTime());
    const expires = new Date(last + DAYS_AFTER * 86_400_000);
    const made = await store.within(async (inner) => {
      for (const old of await inner.links.ofHire(params.id))
        if (old.revokedAt === null) await inner.links.revoke(old.id);
      await inner.audit.add({ by: account.id, act: "hire.linkMade", about: params.id });
      return makeHirerLink(inner, params.id, expires, context.now());
    });
    if (made === null) throw new Refusal("notFound");
    return { url: `${context.publicUrl}/g/${made.token}`, token: made.token, expires: made.link.expiresAt };
  },

  async readGuide({ context, params }) {
    const link = await linkOf(context, params.token);
    const store = context.database.storeFor(link.scope);
    const data = await readHireData(store, link.hireId, context.now());
    if (data.vehicle === null) throw new Refusal("linkUnusable");
    const forecast = await forecastOf(store, data);
    const { description } = data.vehicle.document;
    return {
      hireId: data.row.id,
      reference: data.row.number,
      customer: data.row.customerName,
      stage: data.row.stage,
      from: data.from,
      to: data.to,
      expires: link.expiresAt,
      firm: (await store.firm.get()).name,
      depot: { name: data.depot.name, telephone: asDocument<DepotDocument>(data.depot.document).telephone },
      vehicle: {
        id: data.vehicle.version.of,
        name: description.name,
        registration: description.registration,
        description,
      },
      trip: partOf(data, "trip"),
      forecastInput: forecastInput(data),
      forecast: forecast?.answer ?? null,
      forecastHash: forecast?.inputHash ?? null,
      briefing: briefingFor(data, forecast?.answer ?? null)?.result ?? null,
      faults: await faultsOf(store, data),
      readings: [...panelReadings(data.records, data.depot.timeZone)],
    };
  },

  /** Only readings and what was tried when something failed, only of this hire, only while it runs. */
  async addGuideRecords({ context, params, body }) {
    const link = await linkOf(context, params.token);
    const store = context.database.storeFor(link.scope);
    const data = await readHireData(store, link.hireId, context.now());
    requireStage(data, "booked", "handedOver", "onHire", "returned");
    body.records.forEach((sent, k) => {
      const { record, problems } = checkRecord(sent);
      if (record === null)
        throw new Refusal("recordRefused", {
          problems: problems.map(({ path, expected }) => ({ path: `records.${k}.${path}`, expected })),
        });
      if (record.kind !== "reading" && record.kind !== "help")
        throw badField(`records.${k}.kind`, "expected reading or help");
      if (record.refs.hireId !== link.hireId)
        throw badField(`records.${k}.refs.hireId`, "expected the hire of this link");
      if (record.refs.vehicleId !== undefined && record.refs.vehicleId !== data.row.vehicleId) {
        throw badField(`records.${k}.refs.vehicleId`, "expected the vehicle of this hire");
      }
      if (record.chain !== `${link.hireId}.road`)
        throw badField(`records.${k}.chain`, `expected ${link.hireId}.road`);
    });
    return appendRecords(store, body.records);
  },
} satisfies Partial<Handlers>;
