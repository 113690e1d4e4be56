import type { InsurancePolicy, Terms } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument, toJson } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { Store } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { refuseGaps } from "./rates.ts";

async function termsNow(context: AppContext, store: Store) {
  const { timeZone } = await store.depot.get();
  const today = dateOf(localOf(context.now().toISOString(), timeZone));
  const [hire, insurance] = [await store.terms.on("hire", today), await store.terms.on("insurance", today)];
  const newest = async (of: string) => (await store.terms.newest(of))?.versionId ?? NO_VERSION;
  return {
    newest: { hire: await newest("hire"), insurance: await newest("insurance") },
    hire: hire === null ? null : { versionId: hire.versionId, terms: asDocument<Terms>(hire.document) },
    insurance:
      insurance === null
        ? null
        : { versionId: insurance.versionId, policy: asDocument<InsurancePolicy>(insurance.document) },
  };
}

export const termsHandlers = {
  readTerms: ({ context, signed }) => termsNow(context, signed.store),

  /** The versions before stay: a hire keeps the one that it was quoted under. */
  async putTerms({ context, signed, query, body }) {
    const { store, account } = signed;
    if (body.hire !== undefined) await refuseGaps(context, store, body.hire);
    await store.within(async (inner) => {
      for (const [of, document] of Object.entries(body)) {
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
