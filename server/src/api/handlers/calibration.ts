import { hashJson } from "@setfair/records";
import type { AppContext } from "../../context.ts";
import { asDocument } from "../../desk/documents.ts";
import { readHireData } from "../../desk/hire-data.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { requireStage } from "../../desk/require-stage.ts";
import {
  checkSheet,
  keepUse,
  learnFromReturns,
  type OutcomeDocument,
} from "../../desk/use/learn-from-returns.ts";
import { NO_SHEET, type UseDocument, type UseSheet } from "../../desk/use/measured-use.ts";
import { outcomesPage } from "../../desk/use/outcomes-page.ts";
import type { Store, UseReturnRow } from "../../store/types.ts";
import { NO_VERSION, refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

const OVER = ["returned", "settled", "closed"] as const;
/** how long entering a return may wait for its comparison */
const MOST_MS = 1500;

const versionOf = (row: UseReturnRow | null): string =>
  row === null ? NO_VERSION : hashJson(row.document).slice(0, 16);

async function useAnswer(store: Store, hireId: string) {
  const row = await store.uses.ofHire(hireId);
  const { sheet = NO_SHEET } = row === null ? {} : asDocument<Partial<UseDocument>>(row.document);
  const outcome = row?.outcome ? asDocument<OutcomeDocument>(row.outcome) : null;
  return {
    version: versionOf(row),
    sheet: { ...sheet, added: [...sheet.added], readings: [...sheet.readings] },
    compared:
      outcome?.comparisons.map(({ store: of, used, mean, quantiles, windows, hours }) => ({
        store: of,
        used,
        mean,
        p10: quantiles[1]!,
        p90: quantiles[17]!,
        windows,
        hours,
      })) ?? null,
    leftOut: [...(outcome?.leftOut ?? [])],
  } as Awaited<ReturnType<Handlers["readUse"]>>;
}

async function todayOf(context: AppContext, store: Store): Promise<string> {
  const { timeZone } = await store.depot.get();
  return dateOf(localOf(context.now().toISOString(), timeZone));
}

export const calibrationHandlers = {
  async forecastOutcomes({ context, signed, query }) {
    const { store } = signed;
    return outcomesPage(store, await todayOf(context, store), query.vehicleId ?? null);
  },

  async readUse({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...OVER);
    return useAnswer(signed.store, params.id);
  },

  async writeUse({ context, signed, params, query, body }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const data = await readHireData(inner, params.id, context.now());
      requireStage(data, ...OVER);
      const row = await inner.uses.ofHire(params.id);
      const { sheet = NO_SHEET } = asDocument<Partial<UseDocument>>(row?.document ?? {});
      refuseOtherBase(query.basedOn, { path: "sheet", version: versionOf(row), value: sheet }, body);
      checkSheet(data, body as UseSheet);
      if (!(await keepUse(inner, data, body as UseSheet)))
        throw new Refusal("missing", {
          problems: [{ path: "trip", expected: "a vehicle, a party and a trip on this hire" }],
        });
      await inner.audit.add({ by: account.id, act: "hire.useWritten", about: params.id });
    });
    await learnFromReturns(store, MOST_MS);
    return useAnswer(store, params.id);
  },
} satisfies Partial<Handlers>;
