import type { Terms } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument, toJson } from "../../desk/documents.ts";
import { hasSameLists, inForce, listsOf, readFirmPrices, repairKey } from "../../desk/firm-prices.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { readPriceList, writePriceList } from "../../import/price-lists.ts";
import { bytesOf } from "../../import/run-import.ts";
import type { DatedVersion, Store } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

type PriceLists = ReturnType<typeof listsOf>;

async function todayOf(context: AppContext, store: Store): Promise<string> {
  const { timeZone } = await store.depot.get();
  return dateOf(localOf(context.now().toISOString(), timeZone));
}

/** Two lines for the same damage and size would leave open which one a settlement takes. */
function refuseTwice(damage: PriceLists["damage"]): void {
  const keys = damage.map(repairKey);
  const twice = keys.findIndex((key, k) => keys.indexOf(key) !== k);
  if (twice >= 0)
    throw badField(`damage.${twice}`, "expected one price for each thing, kind of damage and size");
}

/** The same terms with other lists, from a day on. */
async function writeLists(
  inner: Store,
  from: DatedVersion,
  validFrom: string,
  lists: PriceLists,
  by: string,
) {
  const terms = asDocument<Terms>(from.document);
  const id = from.validFrom === validFrom ? terms.id : `terms-${validFrom}`;
  const tariff = { ...terms.tariff, ...lists };
  const document = toJson({ ...terms, id, validFrom, tariff });
  const { versionId } = await inner.terms.put({ of: "hire", validFrom, document });
  await inner.audit.add({ by, act: "terms.changed", about: "hire", document: { versionId } });
}

export const firmPriceHandlers = {
  readFirmPrices: async ({ context, signed }) =>
    readFirmPrices(signed.store, await todayOf(context, signed.store)),

  /** The rest of the terms stays as it is on that day; a hire keeps the version that it was quoted under. */
  async putFirmPrices({ context, signed, query, body }) {
    const { store, account } = signed;
    const { validFrom, kit, damage } = body;
    const today = await todayOf(context, store);
    if (validFrom < today) throw badField("validFrom", `expected ${today} or a later day`);
    refuseTwice(damage);
    const lists = { kit, damage };
    await store.within(async (inner) => {
      await inner.terms.hold("hire");
      const newest = await inner.terms.newest("hire");
      const value = newest === null ? {} : listsOf(asDocument<Terms>(newest.document));
      refuseOtherBase(
        query.basedOn,
        { path: "prices", version: newest?.versionId ?? NO_VERSION, value },
        lists,
      );
      const at = await inner.terms.on("hire", validFrom);
      if (at === null)
        throw new Refusal("missing", {
          problems: [{ path: "terms", expected: `expected hire terms that hold on ${validFrom}` }],
        });
      const old = listsOf(asDocument<Terms>(at.document));
      const later = inForce(await inner.terms.versions("hire")).filter((each) => each.validFrom > validFrom);
      await writeLists(inner, at, validFrom, lists, account.id);
      for (const each of later)
        if (hasSameLists(old, listsOf(asDocument<Terms>(each.document))))
          await writeLists(inner, each, each.validFrom, lists, account.id);
    });
    return readFirmPrices(store, today);
  },

  async readPriceList({ params, body }) {
    const read = readPriceList(params.list, bytesOf(body.file), body.encoding ?? null);
    return { ...read, ignored: [...read.ignored], repairs: [...read.repairs], rejected: [...read.rejected] };
  },

  async writePriceList({ context, signed, params, reply }) {
    const { store, account } = signed;
    const now = await store.terms.on("hire", await todayOf(context, store));
    const lists = now === null ? { kit: {}, damage: [] } : listsOf(asDocument<Terms>(now.document));
    await store.audit.add({ by: account.id, act: "export.made", about: params.list });
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `attachment; filename="${params.list}.csv"`);
    await reply.type("text/csv; charset=utf-8").send(writePriceList(lists, params.list));
    return undefined;
  },
} satisfies Partial<Handlers>;
