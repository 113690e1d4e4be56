/** The invented firm: nobody and nothing in it exists. */
import { addDays, sameEveryDay, Temporal } from "@setfair/engine";
import {
  type Database,
  type DemoSignIn,
  type DepotDocument,
  FIRM_TERMS,
  hashPassword,
  type PhotographFiles,
  type Scope,
  type Store,
  toJson,
} from "@setfair/server";
import type { DemoDepot } from "./demo-depot.ts";
import type { DemoHire } from "./demo-hire.ts";
import { keptDays, workedHires } from "./hires.ts";
import { earlierUses, withPastTrip } from "./history/past-hires.ts";
import { putUse } from "./history/put-uses.ts";
import { putMessages } from "./messages.ts";
import { putHire } from "./put-hire.ts";
import { schoolHolidays } from "./season/calendar.ts";
import { daysAroundToday, makeSeason } from "./season/make-season.ts";
import { DEMO_SIGN_INS } from "./sign-ins.ts";
import { putStock } from "./stock.ts";
import { demoInsurance, demoTerms } from "./terms.ts";
import { DEPOT } from "./trips.ts";
import { putUpkeep } from "./upkeep.ts";
import { demoVehicles } from "./vehicles.ts";

export { mayFriday } from "./dates.ts";
export { DEMO_SIGN_INS } from "./sign-ins.ts";
export { demoInsurance, demoTerms } from "./terms.ts";
export { highlandsTrip, lakesTrip, loadForTwo, twoAdults } from "./trips.ts";
export { HERON } from "./vehicles.ts";

const TIME_ZONE = "Europe/London";
const WEEKDAY = { opens: "08:00", closes: "17:30" };
const DOCUMENT: Omit<DepotDocument, "hours"> = {
  telephone: "01632 960123",
  country: DEPOT.country,
  latitudeDeg: DEPOT.latitudeDeg,
  longitudeDeg: DEPOT.longitudeDeg,
  elevationM: DEPOT.elevationM ?? 0,
  turnaroundMinutes: 240,
};

/** The firm as its invoices name it; no address and no number that anybody has. */
const ON_INVOICES = {
  name: "Marlow Tarn Motorhome Hire (invented)",
  address: "1 Invented Yard, Marlow Tarn",
  vatNumber: "GB000000000",
};

/** Later on Sundays, and a day of stock-taking well after all that is booked by hand. */
function hoursAround(today: string): DepotDocument["hours"] {
  const { week } = sameEveryDay(WEEKDAY);
  const on = addDays(today, 150);
  return {
    week: { ...week, sunday: { opens: "10:00", closes: "17:30" } },
    closed: [{ from: on, to: on, name: "Stock-taking" }],
  };
}

async function makeFirm(
  database: Database,
  today: string,
): Promise<{ readonly scope: Scope; readonly accountId: string }> {
  const [manager] = DEMO_SIGN_INS;
  const terms = demoTerms(today);
  const insurance = demoInsurance(today);
  return database.system.createFirm({
    firm: { name: "Marlow Tarn Motorhome Hire (invented)", document: { demo: true } },
    depot: {
      name: "Marlow Tarn depot",
      timeZone: TIME_ZONE,
      document: toJson({ ...DOCUMENT, hours: hoursAround(today), schoolHolidays: holidaysAround(today) }),
    },
    terms: [
      { of: "hire", validFrom: terms.validFrom, document: toJson(terms) },
      { of: "insurance", validFrom: insurance.validFrom, document: toJson(insurance) },
      { of: FIRM_TERMS, validFrom: terms.validFrom, document: toJson(ON_INVOICES) },
    ],
    manager: { login: manager.login, name: manager.name, passwordHash: await hashPassword(manager.password) },
  });
}

/** School holidays of last year, this and the next: invented, in the usual pattern. */
function holidaysAround(today: string): DepotDocument["schoolHolidays"] {
  const year = Number(today.slice(0, 4));
  return [year - 1, year, year + 1].flatMap(schoolHolidays).map(([from, to]) => ({ from, to }));
}

function dayOf(now: Date): string {
  return Temporal.Instant.from(now.toISOString()).toZonedDateTimeISO(TIME_ZONE).toPlainDate().toString();
}

/** How many of the hires that came back last have photographs; each is drawn while the demo is loaded. */
const PHOTOGRAPHED = 3;

/** The hires that came back last, those still to be settled first. */
function photographedOf(hires: readonly DemoHire[]): ReadonlySet<DemoHire> {
  const rank = ({ stage }: DemoHire) => ["returned", "settled", "closed"].indexOf(stage);
  const back = hires
    .filter((hire) => hire.walked && rank(hire) >= 0)
    .sort((a, b) => rank(a) - rank(b) || (a.to < b.to ? 1 : -1));
  return new Set(back.slice(0, PHOTOGRAPHED));
}

interface Keeper {
  readonly store: Store;
  readonly scope: Scope;
  readonly files: PhotographFiles;
}

/** Keeps a photograph as a tablet's would be kept. */
const keeperOf =
  ({ store, scope, files }: Keeper): NonNullable<DemoDepot["keepPhotograph"]> =>
  async (jpeg, sha256, hireId) => {
    const answer = await files.put({ scope, sha256, from: 0, total: jpeg.length, body: oneChunk(jpeg) });
    if (answer.state !== "kept")
      throw new Error(`demo: a photograph was not kept, ${JSON.stringify(answer)}`);
    const { bytes, widthPx, heightPx } = answer;
    await store.photographs.add({ sha256, bytes, widthPx, heightPx, hireId, takenAt: null });
  };
async function* oneChunk(bytes: Buffer): AsyncGenerator<Buffer> {
  yield bytes;
}

interface ToFill {
  readonly store: Store;
  readonly by: string;
  readonly now: Date;
  readonly keepPhotograph: DemoDepot["keepPhotograph"];
}

async function fillDepot({ store, by, now, keepPhotograph }: ToFill): Promise<void> {
  const today = dayOf(now);
  const vehicles = demoVehicles(today);
  for (const { id, validFrom, document } of vehicles) {
    await store.vehicles.put({ of: id, validFrom, document: toJson(document) });
  }
  const version = await store.terms.on("hire", today);
  if (version === null) throw new Error("demo: its terms do not hold today");
  const terms = demoTerms(today);
  const season = makeSeason({
    today,
    terms,
    vehicles,
    taken: [...keptDays(today), ...daysAroundToday(today)],
  });
  const hires = [...season, ...workedHires(today)]
    .map((hire) => withPastTrip(hire, vehicles))
    .sort((a, b) => (a.from < b.from ? -1 : 1));
  const depot: DemoDepot = {
    store,
    by,
    now,
    today,
    timeZone: TIME_ZONE,
    turnaroundMinutes: DOCUMENT.turnaroundMinutes,
    terms,
    termsVersionId: version.versionId,
    insurance: demoInsurance(today),
    vehicles: new Map(vehicles.map((vehicle) => [vehicle.id, vehicle])),
    customerIds: new Map(),
    over: [],
    keepPhotograph,
    photographed: photographedOf(hires),
  };
  for (const use of earlierUses({ today, terms, vehicles })) await putUse(depot, use, null);
  for (const hire of hires) await putHire(depot, hire);
  await putUpkeep({ store, by, today }, vehicles);
  for (const hireId of depot.over) await store.bookings.release(hireId);
  await putStock(
    { store, by, today },
    vehicles.map(({ id }) => id),
  );
  await putMessages({ store, by, now, today, timeZone: TIME_ZONE });
}

/**
 * Fills an empty store with the invented firm, all of it counted from `now`.
 * @param files where photographs are kept; without it the hires that came back have none
 * @returns its sign-ins, to be printed
 * @throws where a firm is there already
 */
export async function loadDemo(
  database: Database,
  now: Date,
  files?: PhotographFiles,
): Promise<readonly DemoSignIn[]> {
  if ((await database.system.firmCount()) > 0) throw new Error("demo: there is a firm already");
  const { scope, accountId } = await makeFirm(database, dayOf(now));
  const store = database.storeFor(scope);
  for (const { login, name, role, password } of DEMO_SIGN_INS.slice(1)) {
    await store.accounts.create({ login, name, role, passwordHash: await hashPassword(password) });
  }
  await store.within((inner) =>
    fillDepot({
      store: inner,
      by: accountId,
      now,
      keepPhotograph: files === undefined ? null : keeperOf({ store: inner, scope, files }),
    }),
  );
  return DEMO_SIGN_INS;
}
