import { checkPacking } from "@setfair/engine";
import type { z } from "zod";
import { abroadOf } from "../../desk/abroad.ts";
import { toJson } from "../../desk/documents.ts";
import { partOf } from "../../desk/hire-data.ts";
import {
  asStockItem,
  holdStock,
  isByTerms,
  joinAsks,
  type KnownItem,
  type StockItemDocument,
} from "../../desk/stock.ts";
import { documentOf, hireStock, stockHistory, stockList } from "../../desk/stock-page.ts";
import type { StockHoldRow } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import type { newStockItemSchema } from "../schemas/stock.ts";
import { changeHire, type OpenHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

/** As the store takes it; a certificate has its first and last day, and nothing ends before it began. */
function itemOf(body: z.output<typeof newStockItemSchema>) {
  const { kind, name, size, count, validFrom, expiresOn, retiredOn, puts, vehicleId, note } = body;
  if (validFrom !== undefined && expiresOn !== undefined && expiresOn < validFrom)
    throw badField("expiresOn", "expected a day not before validFrom");
  if (kind === "onHireCertificate" && (validFrom === undefined || expiresOn === undefined))
    throw badField(validFrom === undefined ? "validFrom" : "expiresOn", "expected the certificate's day");
  const document: StockItemDocument = {
    puts,
    ...(validFrom === undefined ? {} : { validFrom }),
    ...(vehicleId === undefined ? {} : { vehicleId }),
    ...(note === undefined ? {} : { note }),
  };
  return {
    kind,
    name,
    size: size ?? null,
    count,
    expiresOn: expiresOn ?? null,
    retiredOn: retiredOn ?? null,
    document: toJson(document),
  };
}

/** What is packed counts as seen aboard for the journey abroad, and what is taken out again does not. */
async function putAboard(
  hire: OpenHire,
  item: KnownItem,
  hold: StockHoldRow,
  isPacked: boolean,
): Promise<void> {
  const { puts, validFrom } = documentOf(item);
  const isCertificate = item.kind === "onHireCertificate";
  if (puts.length === 0 && !isCertificate) return;
  const said = abroadOf(hire.data);
  const others = await othersPack(hire, hold);
  const kept = said.kitAboard.filter((thing) => others.has(thing) || !puts.includes(thing));
  const { certificate: _, ...papers } = said.papers;
  const certificate =
    isPacked && validFrom !== undefined && item.expiresOn !== undefined
      ? { certificate: { validFrom, validTo: item.expiresOn } }
      : {};
  await hire.putPart("abroad", {
    ...said,
    kitAboard: isPacked ? [...new Set([...said.kitAboard, ...puts])] : kept,
    papers: isCertificate ? { ...papers, ...certificate } : said.papers,
  });
}

/** What other things packed for this hire put aboard. */
async function othersPack(hire: OpenHire, hold: StockHoldRow): Promise<ReadonlySet<string>> {
  const rows = await hire.store.stock.items();
  const held = await hire.store.stock.holdsOf([hire.data.row.id]);
  const ids = held
    .filter(({ id, packedAt }) => id !== hold.id && packedAt !== null)
    .map(({ itemId }) => itemId);
  return new Set(
    rows.filter(({ id }) => ids.includes(id)).flatMap((row) => documentOf(asStockItem(row)).puts),
  );
}

async function pack(hire: OpenHire, item: KnownItem, hold: StockHoldRow): Promise<void> {
  const { vehicleId } = documentOf(item);
  const { findings } = checkPacking({
    item,
    to: hire.data.to,
    vehicleId: hire.data.row.vehicleId,
    ...(vehicleId === undefined ? {} : { madeOutFor: vehicleId }),
  });
  if (findings.length > 0) throw new Refusal("refused", { findings });
  await hire.store.stock.setPacked(hold.id, true);
  await putAboard(hire, item, hold, true);
}

export const stockHandlers = {
  listStock: ({ context, signed }) => stockList(signed.store, context.now()),
  readStockItem: ({ context, signed, params }) => stockHistory(signed.store, params.id, context.now()),

  async addStockItem({ context, signed, body }) {
    const { store, account } = signed;
    const id = await store.within(async (inner) => {
      const item = await inner.stock.addItem(itemOf(body));
      const event = { itemId: item.id, by: account.id, document: { note: body.note ?? "" } };
      await inner.stock.addEvent({ ...event, act: "added" });
      return item.id;
    });
    return stockHistory(store, id, context.now());
  },

  async changeStockItem({ context, signed, params, body }) {
    const { store, account } = signed;
    const { version, reason, ...fields } = body;
    await store.within(async (inner) => {
      await inner.stock.lock();
      const row = (await inner.stock.items()).find(({ id }) => id === params.id);
      if (row === undefined) throw new Refusal("notFound");
      if (row.kind !== fields.kind)
        throw badField("kind", `expected ${row.kind}, as it was put on the shelf`);
      if (!(await inner.stock.changeItem(params.id, itemOf(fields), version))) throw new Refusal("stale");
      const act = fields.retiredOn !== undefined && row.retiredOn === null ? "retired" : "changed";
      await inner.stock.addEvent({ itemId: params.id, act, by: account.id, document: { note: reason } });
    });
    return stockHistory(store, params.id, context.now());
  },

  readHireStock: ({ context, signed, params }) => hireStock(signed.store, params.id, context.now()),

  async setHireStock(call) {
    await changeHire(call, OPEN_STAGES, async (hire) => {
      const { asks } = call.body;
      await hire.refuseOtherBase("stock", call.query.basedOn, { asks });
      await hire.putPart("stock", { asks });
      if (hire.data.row.stage === "booked") {
        const wanted = joinAsks(partOf(hire.data, "quote")?.extras ?? [], asks);
        await holdStock(hire.store, hire.data, hire.data.row, wanted);
      }
      await hire.audit("hire.stockSet", { count: asks.reduce((sum, { count }) => sum + count, 0) });
    });
    return hireStock(call.signed.store, call.params.id, call.context.now());
  },

  async actOnHireStock(call) {
    const { act, note } = call.body;
    await changeHire(call, [], async (hire) => {
      const held = await hire.store.stock.holdsOf([hire.data.row.id]);
      const hold = held.find(({ id }) => id === call.params.holdId);
      if (hold === undefined) throw new Refusal("notFound");
      const row = (await hire.store.stock.items()).find(({ id }) => id === hold.itemId);
      const byTerms = { id: hold.itemId, kind: hold.itemId, name: hold.itemId, count: hold.count, row: null };
      if (row === undefined && !isByTerms(hold.itemId)) throw new Refusal("notFound");
      const item = row === undefined ? byTerms : asStockItem(row);
      if (act === "pack") await pack(hire, item, hold);
      else if (act === "unpack") {
        await hire.store.stock.setPacked(hold.id, false);
        await putAboard(hire, item, hold, false);
      } else if (!(await hire.store.stock.endHold(hold.id))) {
        throw new Refusal("wrongStage", { problems: [{ path: "act", expected: "a hire that has begun" }] });
      }
      const words = { pack: "packed", unpack: "unpacked", back: "back" } as const;
      const document = { hireId: hire.data.row.id, note: note ?? "" };
      await hire.store.stock.addEvent({ itemId: hold.itemId, act: words[act], by: hire.by, document });
      await hire.audit(`hire.stock.${words[act]}`, { name: item.name, count: hold.count });
    });
    return hireStock(call.signed.store, call.params.id, call.context.now());
  },
} satisfies Partial<Handlers>;
