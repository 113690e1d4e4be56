import type { Terms } from "@setfair/engine";
import { crewOf } from "../../desk/crew.ts";
import { asDocument, type DepotDocument, toJson } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { hoursAnswer } from "../../desk/opening-hours.ts";
import { firmOnInvoices } from "../../money/invoices.ts";
import type { DepotRow } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { FIRST_STEPS } from "../schemas/depot.ts";
import { checkWeek } from "./check-week.ts";

function settingsOf({ name, timeZone, version, document }: DepotRow) {
  const depot = asDocument<DepotDocument>(document);
  const { telephone, hours, turnaroundMinutes, country, schoolHolidays = [] } = depot;
  const { distances = "km" as const, latitudeDeg, longitudeDeg } = depot;
  return {
    name,
    telephone,
    hours: hoursAnswer(hours),
    turnaroundMinutes,
    distances,
    latitudeDeg,
    longitudeDeg,
    crew: crewOf(depot),
    schoolHolidays: schoolHolidays.map(({ from, to }) => ({ from, to })),
    version,
    timeZone,
    country,
  };
}

interface Span {
  readonly from: string;
  readonly to: string;
}
const byFirstDay = (a: Span, b: Span) => (a.from < b.from ? -1 : 1);

function refuseBackward(spans: readonly Span[], path: string): void {
  for (const [k, { from, to }] of spans.entries())
    if (to < from) throw badField(`${path}.${k}.to`, "expected a day not before `from`");
}

export const depotHandlers = {
  readDepot: async ({ signed }) => settingsOf(await signed.store.depot.get()),

  async firstSteps({ context, signed }) {
    const { store } = signed;
    const today = dateOf(localOf(context.now().toISOString(), (await store.depot.get()).timeZone));
    const terms = await store.terms.on("hire", today);
    const tariff = terms === null ? null : asDocument<Terms>(terms.document).tariff;
    const done: Record<(typeof FIRST_STEPS)[number], boolean> = {
      vehicle: (await store.vehicles.allOn("9999-12-31")).length > 0,
      // set-up leaves the price of fuel out
      rateCard: Object.keys(tariff?.fuelPencePerLitre ?? {}).length > 0,
      prices: Object.keys(tariff?.kit ?? {}).length + (tariff?.damage ?? []).length > 0,
      insurer: (await store.terms.versions("insurance")).length > 0,
      firm: (await firmOnInvoices(store, today)) !== null,
      people: (await store.accounts.list()).filter(({ disabledAt }) => disabledAt === null).length > 1,
    };
    return { open: FIRST_STEPS.filter((step) => !done[step]), of: FIRST_STEPS.length };
  },

  async putDepot({ signed, body }) {
    const { store, account } = signed;
    const { name, version, ...settings } = body;
    const { week, closed } = settings.hours;
    checkWeek(settings.hours, "hours");
    refuseBackward(closed, "hours.closed");
    refuseBackward(settings.schoolHolidays, "schoolHolidays");
    await store.within(async (inner) => {
      const now = await inner.depot.get();
      // the height belongs to the point: at another one it is looked up again
      const { elevationM, ...before } = asDocument<DepotDocument>(now.document);
      const isSamePoint =
        before.latitudeDeg === settings.latitudeDeg && before.longitudeDeg === settings.longitudeDeg;
      const document = toJson({
        ...before,
        ...(isSamePoint && elevationM !== undefined ? { elevationM } : {}),
        ...settings,
        hours: { week, closed: closed.toSorted(byFirstDay) },
        schoolHolidays: settings.schoolHolidays.toSorted(byFirstDay),
      });
      const answer = await inner.depot.update({ name, document }, version);
      if (!answer.ok) throw new Refusal("stale");
      await inner.audit.add({ by: account.id, act: "depot.changed", about: now.id, document: {} });
    });
    return settingsOf(await store.depot.get());
  },
} satisfies Partial<Handlers>;
