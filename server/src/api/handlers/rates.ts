import { checkTerms, rateDays, type Terms } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { asDocument } from "../../desk/documents.ts";
import { classesOf } from "../../desk/enquiries-page.ts";
import { plainFinding } from "../../desk/glass.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

const YEAR_DAYS = 365;

async function todayOf(context: AppContext, store: Store): Promise<string> {
  const { timeZone } = await store.depot.get();
  return dateOf(localOf(context.now().toISOString(), timeZone));
}

/** Refuses hire terms that cannot price every day for every class of the fleet. */
export async function refuseGaps(context: AppContext, store: Store, terms: Terms): Promise<void> {
  const classes = await classesOf(store, await todayOf(context, store));
  const { findings } = checkTerms({ terms, classes });
  const refused = findings.filter(({ severity }) => severity === "refuse");
  if (refused.length > 0) throw new Refusal("refused", { findings: refused });
}

export const rateHandlers = {
  async checkTerms({ context, signed, body }) {
    const { terms, from } = body;
    const classes = await classesOf(signed.store, await todayOf(context, signed.store));
    const { result, findings } = checkTerms({ terms, classes });
    return {
      findings: findings.map(plainFinding),
      gaps: [...result.gaps],
      overlaps: [...result.overlaps],
      classes: [
        ...new Set([...classes, ...terms.seasons.flatMap(({ nightPence }) => Object.keys(nightPence))]),
      ],
      days: rateDays(terms, from, YEAR_DAYS).map((day) => ({ ...day, under: [...day.under] })),
    };
  },

  async termsVersions({ context, signed }) {
    const { store } = signed;
    const now = (await store.terms.on("hire", await todayOf(context, store)))?.versionId;
    const versions = await store.terms.versions("hire");
    const place = versions.findIndex(({ versionId }) => versionId === now);
    return {
      versions: versions
        .map(({ versionId, validFrom, createdAt, document }, k) => ({
          versionId,
          termsId: asDocument<Terms>(document).id,
          validFrom,
          writtenAt: createdAt,
          when: k === place ? ("now" as const) : k < place ? ("before" as const) : ("later" as const),
        }))
        .reverse(),
    };
  },

  async termsVersion({ signed, params }) {
    const version = await signed.store.terms.byId(params.id);
    if (version === null || version.of !== "hire") throw new Refusal("notFound");
    return { versionId: version.versionId, terms: asDocument<Terms>(version.document) };
  },
} satisfies Partial<Handlers>;
