import type { InsurancePolicy, Terms } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument, toJson } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { DatedVersion, Store } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { refuseGaps } from "./rates.ts";

const asTerms = (version: DatedVersion | null) =>
  version === null ? null : { versionId: version.versionId, terms: asDocument<Terms>(version.document) };
const asPolicy = (version: DatedVersion | null) =>
  version === null
    ? null
    : { versionId: version.versionId, policy: asDocument<InsurancePolicy>(version.document) };

async function termsNow(context: AppContext, { depot, terms }: Store) {
  const { timeZone } = await depot.get();
  const today = dateOf(localOf(context.now().toISOString(), timeZone));
  return {
    hire: asTerms(await terms.on("hire", today)),
    insurance: asPolicy(await terms.on("insurance", today)),
    newest: {
      hire: asTerms(await terms.newest("hire")),
      insurance: asPolicy(await terms.newest("insurance")),
    },
  };
}

/** The terms with the prices of things and repairs that hold on their day; as sent where none do. */
async function withPricesOf(store: Store, terms: Terms): Promise<Terms> {
  const on = await store.terms.on("hire", terms.validFrom);
  if (on === null) return terms;
  const { kit, damage } = asDocument<Terms>(on.document).tariff;
  return { ...terms, tariff: { ...terms.tariff, kit, damage } };
}

export const termsHandlers = {
  readTerms: ({ context, signed }) => termsNow(context, signed.store),

  /** The versions before stay: a hire keeps the one that it was quoted under. */
  async putTerms({ context, signed, query, body }) {
    const { store, account } = signed;
    const { pricesStay = false, hire, insurance } = body;
    if (hire !== undefined) await refuseGaps(context, store, hire);
    await store.within(async (inner) => {
      const sent = { hire: hire && pricesStay ? await withPricesOf(inner, hire) : hire, insurance };
      for (const [of, document] of Object.entries(sent)) {
        if (document === undefined) continue;
        await inner.terms.hold(of);
        const newest = await inner.terms.newest(of);
        const now = { path: of, version: newest?.versionId ?? NO_VERSION, value: newest?.document ?? {} };
        refuseOtherBase(query.basedOn, now, document);
        const version = await inner.terms.put({
          of,
          validFrom: document.validFrom,
          document: toJson(document),
        });
        await inner.audit.add({
          by: account.id,
          act: "terms.changed",
          about: of,
          document: { versionId: version.versionId },
        });
      }
    });
    return termsNow(context, store);
  },
} satisfies Partial<Handlers>;
