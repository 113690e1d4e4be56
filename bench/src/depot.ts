import { DEMO_SIGN_INS, HERON, loadDemo, twoAdults } from "@setfair/demo";
import { addDays, toInstant } from "@setfair/engine";
import { buildApp, type Database, openFiles, type Scope, type Store, toJson } from "@setfair/server";
import { makePlace } from "@setfair/server/for-tests";

export const NOW = new Date("2027-02-10T09:00:00.000Z");
const ZONE = "Europe/London";
const VEHICLES = 40;
const AT_ONCE = 250;
const FIRST = ["Ada", "Bo", "Cleo", "Dan", "Eve", "Finn", "Gwen", "Hal", "Ida", "Jo"];
/** The one that is looked for by name: the same hire in a small depot and in a large one. */
export const SOUGHT = { index: 50, name: "Quillon Bramblewood" } as const;
export const platesOf = (vehicle: number) => `ZZ${String(vehicle).padStart(2, "0")} INV`;

export interface FilledDepot {
  readonly store: Store;
  /** asks the API as the desk does; throws on any answer but 200 */
  get(path: string): Promise<unknown>;
  readonly soughtId: string;
  readonly soughtNumber: string;
  close(): Promise<void>;
}

/** The invented firm with its six hires in hand, and so many that are over; vehicles leave one after the other, a week each. */
export async function fillDepot(kind: "sqlite" | "postgres", hires: number): Promise<FilledDepot> {
  const place = await makePlace(kind);
  try {
    const database = await place.open({ now: () => NOW });
    await loadDemo(database, NOW);
    const { scope, accountId } = await managerOf(database);
    const store = database.storeFor(scope);
    await addVehicles(store);
    for (let start = 0; start < hires; start += AT_ONCE) {
      await store.within(async (inner) => {
        for (let n = start; n < Math.min(start + AT_ONCE, hires); n++) await addHire(inner, n, accountId);
      });
    }
    await place.gatherStatistics();
    const sought = (await store.hires.search(SOUGHT.name)).rows[0];
    if (sought === undefined) throw new Error("bench: the hire that is looked for was not found");
    const { get, close } = await openDesk(database, place.dataFolder);
    return {
      store,
      get,
      soughtId: sought.id,
      soughtNumber: sought.number,
      close: async () => {
        await close();
        await place.remove();
      },
    };
  } catch (error) {
    await place.remove();
    throw error;
  }
}

async function managerOf(database: Database): Promise<{ scope: Scope; accountId: string }> {
  const account = await database.system.accountByLogin(DEMO_SIGN_INS[0].login);
  if (account === null) throw new Error("bench: expected the manager of the invented firm");
  return { scope: { firmId: account.firmId, depotId: account.depotId }, accountId: account.id };
}

async function addVehicles(store: Store): Promise<void> {
  for (let k = 0; k < VEHICLES; k++) {
    const description = { ...HERON, id: `v${k}`, name: `Invented ${k}`, registration: platesOf(k) };
    const document = toJson({ description, dueDates: [], maxDogs: 1, vehicleClass: "panelVan" });
    await store.vehicles.put({ of: description.id, validFrom: description.validFrom, document });
  }
}

/** One hire that is over, with what a hire leaves behind; the one that is looked for is booked and still to come. */
async function addHire(store: Store, n: number, by: string): Promise<void> {
  const isSought = n === SOUGHT.index;
  const vehicle = n % VEHICLES;
  const back = isSought ? "2027-03-12" : addDays("2027-01-29", -8 * Math.floor(n / VEHICLES));
  const period = {
    from: toInstant(`${addDays(back, -7)}T14:00`, ZONE),
    to: toInstant(`${back}T10:00`, ZONE),
  };
  const customer = await store.customers.create({
    name: isSought ? SOUGHT.name : `${FIRST[n % FIRST.length]} Invented${n}`,
    document: toJson({ telephone: "07700 900199", email: "nobody@example.org" }),
  });
  const row = await store.hires.create({ ...period, customerId: customer.id });
  await store.hires.putPart(row.id, "party", toJson(twoAdults()), 0, by);
  await store.bookings.book({ hireId: row.id, vehicleId: `v${vehicle}`, ...period, turnaroundMinutes: 240 });
  await store.hires.update(
    row.id,
    {
      stage: isSought ? "booked" : "closed",
      vehicleId: `v${vehicle}`,
      registration: platesOf(vehicle),
    },
    row.version,
  );
  const document = toJson({ on: back, method: "card" });
  await store.payments.add({ hireId: row.id, kind: "payment", currency: "GBP", pence: 65_000, document, by });
  await store.audit.add({ by, act: "hire.enquired", about: row.id });
}

async function openDesk(database: Database, dataFolder: string) {
  const context = {
    database,
    files: openFiles({ dataFolder }),
    now: () => NOW,
    publicUrl: "http://127.0.0.1",
    secure: false,
    demo: true,
  };
  const app = await buildApp(context, { webFolder: null });
  const { login, password } = DEMO_SIGN_INS[1];
  const signedIn = await app.inject({ method: "POST", url: "/api/session", payload: { login, password } });
  const cookie = signedIn.cookies.map((one) => `${one.name}=${one.value}`).join("; ");
  return {
    async get(path: string): Promise<unknown> {
      const answer = await app.inject({ method: "GET", url: `/api${path}`, headers: { cookie } });
      if (answer.statusCode !== 200)
        throw new Error(`${path}: ${answer.statusCode} ${answer.body.slice(0, 200)}`);
      return answer.json();
    },
    close: () => app.close(),
  };
}
