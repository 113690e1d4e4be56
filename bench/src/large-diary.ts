import { DEMO_SIGN_INS, HERON, loadDemo, twoAdults } from "@setfair/demo";
import { addDays, Temporal, toInstant } from "@setfair/engine";
import { openDatabase, type Store, toJson } from "@setfair/server";

const ZONE = "Europe/London";
/** Beside the seven of the invented firm. */
const MORE_VEHICLES = 53;
const [DAYS_BACK, DAYS_AHEAD] = [70, 340] as const;
const LENGTHS = [3, 7, 4, 10, 7, 5, 14] as const;
/** days that stand empty between two hires */
const GAPS = [1, 2, 5, 1, 3, 8, 1, 4, 2, 1, 6] as const;
const NAMES = ["Applewhistle", "Brackenfold", "Cobblethwaite", "Dapplemere", "Elderwick"] as const;

/** Fills a data folder with 60 vehicles that are out most days of 400, all of it around today. */
export async function fillLargeDiary(dataFolder: string): Promise<void> {
  const now = new Date();
  const database = await openDatabase({ dataFolder, now: () => now });
  try {
    await loadDemo(database, now);
    const manager = await database.system.accountByLogin(DEMO_SIGN_INS[0].login);
    if (manager === null) throw new Error("bench: expected the manager of the invented firm");
    const store = database.storeFor({ firmId: manager.firmId, depotId: manager.depotId });
    const today = Temporal.Instant.from(now.toISOString()).toZonedDateTimeISO(ZONE).toPlainDate().toString();
    for (let k = 0; k < MORE_VEHICLES; k++)
      await store.within((inner) => fillVehicle(inner, { k, today, by: manager.id }));
  } finally {
    await database.close();
  }
}

interface Filling {
  readonly k: number;
  readonly today: string;
  readonly by: string;
}

async function fillVehicle(store: Store, { k, today, by }: Filling): Promise<void> {
  const [id, registration] = [`large${k}`, `ZZ${String(k).padStart(2, "0")} INV`];
  const description = { ...HERON, id, name: `Invented ${k}`, registration };
  const document = toJson({ description, dueDates: [], maxDogs: 1, vehicleClass: "panelVan" });
  await store.vehicles.put({ of: id, validFrom: description.validFrom, document });
  let day = addDays(today, -DAYS_BACK + (k % 9));
  // a linear congruential step, so that no two vehicles have the same pattern of gaps
  for (
    let n = k * 7919 + 1;
    day < addDays(today, DAYS_AHEAD);
    n = (n * 1_103_515_245 + 12_345) % 2_147_483_648
  ) {
    const to = addDays(day, LENGTHS[n % LENGTHS.length] ?? 7);
    await addHire(store, { id, registration, from: day, to, today, by, name: NAMES[n % NAMES.length] ?? "" });
    day = addDays(to, GAPS[Math.floor(n / 64) % GAPS.length] ?? 1);
  }
}

interface NewHire {
  readonly id: string;
  readonly registration: string;
  readonly from: string;
  readonly to: string;
  readonly today: string;
  readonly by: string;
  readonly name: string;
}

async function addHire(store: Store, { id, registration, from, to, today, by, name }: NewHire) {
  const period = { from: toInstant(`${from}T14:00`, ZONE), to: toInstant(`${to}T10:00`, ZONE) };
  const customer = await store.customers.create({
    name: `Invented ${name}`,
    document: toJson({ telephone: "07700 900199", email: "nobody@example.org" }),
  });
  const row = await store.hires.create({ ...period, customerId: customer.id });
  await store.hires.putPart(row.id, "party", toJson(twoAdults()), 0, by);
  await store.bookings.book({ hireId: row.id, vehicleId: id, ...period, turnaroundMinutes: 240 });
  const stage = to < today ? "closed" : from < today ? "onHire" : "booked";
  await store.hires.update(row.id, { stage, vehicleId: id, registration }, row.version);
}
