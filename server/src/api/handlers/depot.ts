import { crewOf } from "../../desk/crew.ts";
import { asDocument, type DepotDocument, toJson } from "../../desk/documents.ts";
import type { DepotRow } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

function settingsOf({ name, timeZone, version, document }: DepotRow) {
  const depot = asDocument<DepotDocument>(document);
  const { telephone, opens, closes, turnaroundMinutes, country, schoolHolidays = [] } = depot;
  return {
    name,
    telephone,
    opens,
    closes,
    turnaroundMinutes,
    crew: crewOf(depot),
    schoolHolidays: schoolHolidays.map(({ from, to }) => ({ from, to })),
    version,
    timeZone,
    country,
  };
}

export const depotHandlers = {
  readDepot: async ({ signed }) => settingsOf(await signed.store.depot.get()),

  async putDepot({ signed, body }) {
    const { store, account } = signed;
    const { name, version, ...settings } = body;
    if (settings.closes <= settings.opens) throw badField("closes", "expected a time after `opens`");
    for (const [k, { from, to }] of settings.schoolHolidays.entries())
      if (to < from) throw badField(`schoolHolidays.${k}.to`, "expected a day not before `from`");
    await store.within(async (inner) => {
      const now = await inner.depot.get();
      const schoolHolidays = settings.schoolHolidays.toSorted((a, b) => (a.from < b.from ? -1 : 1));
      const document = toJson({
        ...asDocument<DepotDocument>(now.document),
        ...settings,
        schoolHolidays,
      });
      const answer = await inner.depot.update({ name, document }, version);
      if (!answer.ok) throw new Refusal("stale");
      await inner.audit.add({ by: account.id, act: "depot.changed", about: now.id, document: {} });
    });
    return settingsOf(await store.depot.get());
  },
} satisfies Partial<Handlers>;
