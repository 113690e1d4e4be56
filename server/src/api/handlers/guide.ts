import { hirerOf, makeHirerLink } from "../../auth/hirer-links.ts";
import type { AppContext } from "../../context.ts";
import { countriesForHirer } from "../../desk/abroad.ts";
import { inputNow, settlementOf } from "../../desk/after-hire.ts";
import { briefingFor } from "../../desk/briefing.ts";
import { figuresOf } from "../../desk/depot-figures.ts";
import { asDocument, type DepotDocument } from "../../desk/documents.ts";
import { forecastInput, forecastOf } from "../../desk/forecast.ts";
import { faultsOf } from "../../desk/help.ts";
import { type HireData, partOf, readHireData } from "../../desk/hire-data.ts";
import { additionsWindow, hirerAdditions } from "../../desk/hirer-additions.ts";
import { panelReadings } from "../../desk/record-facts.ts";
import { requireStage } from "../../desk/require-stage.ts";
import { entriesOfHire } from "../../desk/settlement-entries.ts";
import { lineEvidence, photographsNamed } from "../../desk/statement-evidence.ts";
import { distancesOf } from "../../papers/paper-call.ts";
import type { LinkAnswer, Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { checkGuideRecords, keepGuideRecords } from "./guide-records.ts";
import { sendPhotograph, takePhotograph } from "./photographs.ts";

/** The hire that a link opens; unknown, expired and ended links all look alike. */
async function linkOf(context: AppContext, token: string): Promise<LinkAnswer> {
  const link = token.includes("\0") ? null : await hirerOf(context.database, token);
  if (link === null) throw new Refusal("linkUnusable");
  return link;
}

export const guideHandlers = {
  async makeHirerLink({ context, signed, params }) {
    const { store, account } = signed;
    const data = await readHireData(store, params.id, context.now());
    // after the return it leads to the statement
    requireStage(data, "quote", "booked", "handedOver", "onHire", "returned", "settled", "closed");
    const last = Math.max(Date.parse(data.row.to), context.now().getTime());
    const expires = new Date(last + figuresOf(data.depotDocument).linkDays * 86_400_000);
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
      depot: {
        name: data.depot.name,
        telephone: asDocument<DepotDocument>(data.depot.document).telephone,
        distances: distancesOf(data.depot)(),
      },
      vehicle: {
        id: data.vehicle.version.of,
        name: description.name,
        registration: description.registration,
        description,
      },
      trip: partOf(data, "trip"),
      countries: countriesForHirer(data),
      forecastInput: forecastInput(data),
      forecast: forecast?.answer ?? null,
      forecastHash: forecast?.inputHash ?? null,
      briefing: briefingFor(data, forecast?.answer ?? null)?.result ?? null,
      faults: await faultsOf(store, data),
      readings: [...panelReadings(data.records, data.depot.timeZone)],
      additions: additionsWindow(data),
      statementAt: partOf(data, "settlement")?.frozenAt ?? null,
    };
  },

  /** Only what is the hirer's to say, only of this hire. */
  async addGuideRecords({ context, params, body }) {
    const link = await linkOf(context, params.token);
    const store = context.database.storeFor(link.scope);
    const data = await readHireData(store, link.hireId, context.now());
    const records = await checkGuideRecords(store, data, body.records);
    return keepGuideRecords(context, store, data, records);
  },

  async putGuidePhoto({ context, params, body, request }) {
    const { scope, hireId } = await linkOf(context, params.token);
    const store = context.database.storeFor(scope);
    if ((await store.photographs.ofHire(hireId)).length >= MOST_PHOTOGRAPHS)
      throw badField("sha256", `expected at most ${MOST_PHOTOGRAPHS} photographs of a hire`);
    return takePhotograph(context, { scope, store, hireId }, params.sha256, { body, request });
  },

  /** Of this hire only: what its records name and what its statement shows. */
  async readGuidePhoto({ context, params, query, reply }) {
    const { scope, hireId } = await linkOf(context, params.token);
    const store = context.database.storeFor(scope);
    const data = await readHireData(store, hireId, context.now());
    if (!(await isOfHire(store, data, params.sha256))) throw new Refusal("notFound");
    return sendPhotograph(context, store, params.sha256, query.size, reply);
  },

  async readHirerAdditions({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const window = additionsWindow(data);
    return {
      until: window?.until ?? null,
      isOver: window?.isOver ?? false,
      additions: await hirerAdditions(signed.store, data),
    };
  },
} satisfies Partial<Handlers>;

/** Far more than an honest hire has; a link that went astray must not fill the disk. */
const MOST_PHOTOGRAPHS = 600;

async function isOfHire(store: Store, data: HireData, sha256: string): Promise<boolean> {
  if (photographsNamed(data.records).includes(sha256)) return true;
  if ((partOf(data, "settlement")?.frozenAt ?? null) === null) return false;
  const { result } = await settlementOf(store, data);
  const shown = lineEvidence(result, await inputNow(store, data), data.records);
  if (shown.some(({ out, back }) => out.includes(sha256) || back.includes(sha256))) return true;
  // the copy of a fine or a toll that was passed on
  const notices = (await entriesOfHire(store, data)).filter(({ kind }) => kind === "notice");
  return notices.some(({ document }) =>
    (asDocument<{ photographs?: readonly string[] }>(document).photographs ?? []).includes(sha256),
  );
}
