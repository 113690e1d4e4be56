/** The invented firm: nobody and nothing in it exists. */
import {
  type InsurancePolicy,
  insurancePolicySchema,
  parseWith,
  Temporal,
  type Terms,
  termsSchema,
} from "@setfair/engine";
import {
  type Database,
  type DemoSignIn,
  type DepotDocument,
  hashPassword,
  type Scope,
  type Store,
  toJson,
} from "@setfair/server";
import { demoHires } from "./hires.ts";
import insuranceData from "./insurance.json" with { type: "json" };
import { type DemoDepot, putHire } from "./put-hire.ts";
import { DEMO_SIGN_INS } from "./sign-ins.ts";
import termsData from "./terms.json" with { type: "json" };
import { DEPOT } from "./trips.ts";
import { demoVehicles } from "./vehicles.ts";

export { mayFriday } from "./dates.ts";
export { DEMO_SIGN_INS } from "./sign-ins.ts";
export { highlandsTrip, lakesTrip, loadForTwo, twoAdults } from "./trips.ts";
export { HERON } from "./vehicles.ts";

const TIME_ZONE = "Europe/London";
const DOCUMENT: DepotDocument = {
  telephone: "01632 960123",
  country: DEPOT.country,
  latitudeDeg: DEPOT.latitudeDeg,
  longitudeDeg: DEPOT.longitudeDeg,
  elevationM: DEPOT.elevationM ?? 0,
  opens: "08:00",
  closes: "17:30",
  turnaroundMinutes: 240,
};

/** The terms and the insurer's criteria of the invented firm, checked by their rooms. */
export const demoTerms = (): Terms => parseWith(termsSchema, termsData);
export const demoInsurance = (): InsurancePolicy => parseWith(insurancePolicySchema, insuranceData);

async function makeFirm(database: Database): Promise<{ readonly scope: Scope; readonly accountId: string }> {
  const [manager] = DEMO_SIGN_INS;
  const terms = demoTerms();
  const insurance = demoInsurance();
  return database.system.createFirm({
    firm: { name: "Marlow Tarn Motorhome Hire (invented)", document: { demo: true } },
    depot: { name: "Marlow Tarn depot", timeZone: TIME_ZONE, document: toJson(DOCUMENT) },
    terms: [
      { of: "hire", validFrom: terms.validFrom, document: toJson(terms) },
      { of: "insurance", validFrom: insurance.validFrom, document: toJson(insurance) },
    ],
    manager: { login: manager.login, name: manager.name, passwordHash: await hashPassword(manager.password) },
  });
}

async function fillDepot(store: Store, by: string, now: Date): Promise<void> {
  const today = Temporal.Instant.from(now.toISOString())
    .toZonedDateTimeISO(TIME_ZONE)
    .toPlainDate()
    .toString();
  for (const { id, validFrom, document } of demoVehicles(today)) {
    await store.vehicles.put({ of: id, validFrom, document: toJson(document) });
  }
  const terms = await store.terms.on("hire", today);
  if (terms === null) throw new Error("demo: its terms do not hold today");
  const depot: DemoDepot = {
    store,
    by,
    now,
    today,
    timeZone: TIME_ZONE,
    turnaroundMinutes: DOCUMENT.turnaroundMinutes,
    terms: demoTerms(),
    termsVersionId: terms.versionId,
    insurance: demoInsurance(),
  };
  for (const hire of demoHires(today)) await putHire(depot, hire);
}

/**
 * Fills an empty store with the invented firm, all of it counted from `now`.
 * @returns its sign-ins, to be printed
 * @throws where a firm is there already
 */
export async function loadDemo(database: Database, now: Date): Promise<readonly DemoSignIn[]> {
  if ((await database.system.firmCount()) > 0) throw new Error("demo: there is a firm already");
  const { scope, accountId } = await makeFirm(database);
  const store = database.storeFor(scope);
  for (const { login, name, role, password } of DEMO_SIGN_INS.slice(1)) {
    await store.accounts.create({ login, name, role, passwordHash: await hashPassword(password) });
  }
  await store.within((inner) => fillDepot(inner, accountId, now));
  return DEMO_SIGN_INS;
}
