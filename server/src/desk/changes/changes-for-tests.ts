/** For tests only: a depot at which hires are booked, looked at and changed. */
import { afterAll, beforeAll, expect } from "vitest";
import { heron, makeDepot, type TestDepot } from "../../api/depot-for-tests.ts";
import { toJson } from "../documents.ts";

export const party = {
  travellers: [
    { id: "t1", kind: "adult" },
    { id: "t2", kind: "adult" },
  ],
  dogs: 0,
  experience: "first",
};
export const driver = (id: string, name: string, main: boolean) => ({
  id,
  name,
  born: "1980-05-05",
  main,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "2000-01-01",
    categories: [{ category: "B", from: "2000-01-01", to: "2050-01-01" }],
    endorsements: [],
    checkedOn: "2026-07-30",
  },
  faultIncidents3y: 0,
  disqualified3y: false,
});

export const codes = (lines: readonly { readonly code: string }[]) => lines.map(({ code }) => code);

/** Makes the depot before the tests of a file, and closes it after them. */
export function depotOfChanges() {
  const here = {} as { depot: TestDepot };
  beforeAll(async () => {
    here.depot = await makeDepot("sqlite", "2026-08-01T08:00:00.000Z");
    const dueDates = ["tax", "insurance", "lpgCheck"].map((kind) => ({ kind, dueOn: "2027-12-31" }));
    const taller = {
      ...heron(),
      id: "pv2-c",
      name: "Wren",
      registration: "WR26 ENN",
      dimensions: { ...heron().dimensions, heightM: heron().dimensions.heightM + 0.2 },
    };
    const document = toJson({ description: taller, dueDates, maxDogs: 1, vehicleClass: "panelVan" });
    await here.depot.store.vehicles.put({ of: taller.id, validFrom: "2026-03-01", document });
  }, 60_000);
  afterAll(() => here.depot.close());

  async function bookedHire(name: string, from: string, to: string, vehicleId: string): Promise<string> {
    const customer = {
      name,
      telephone: "07700 900123",
      email: "e@example.org",
      address: "1 Invented Street",
    };
    const made = await here.depot.call("desk", "POST", "/hires", { customer, party, from, to, vehicleId });
    const { id } = made.body.hire;
    expect((await here.depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true })).status).toBe(200);
    expect((await here.depot.call("desk", "POST", `/hires/${id}/book`)).status).toBe(200);
    return id;
  }
  const look = (id: string, change: object) =>
    here.depot.call("desk", "POST", `/hires/${id}/changes/look`, change);
  const confirm = async (id: string, change: object, seen?: string) =>
    here.depot.call("desk", "POST", `/hires/${id}/changes`, {
      change,
      seen: seen ?? (await look(id, change)).body.hash,
    });
  const page = async (id: string) => (await here.depot.call("desk", "GET", `/hires/${id}`)).body;
  /** everything that a change might touch */
  const everything = async () => ({
    hires: await here.depot.store.hires.all({}),
    bookings: await here.depot.store.bookings.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z"),
    blocks: await here.depot.store.blocks.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z"),
    notes: await here.depot.store.notes.open(),
    audit: (await here.depot.store.audit.list({ limit: 200 })).rows.length,
  });

  async function isDoubleBooked(): Promise<boolean> {
    const held = await here.depot.store.bookings.between("2026-01-01T00:00:00Z", "2028-01-01T00:00:00Z");
    return held.some((a) =>
      held.some(
        (b) => a.hireId !== b.hireId && a.vehicleId === b.vehicleId && a.from < b.to && b.from < a.to,
      ),
    );
  }

  /** What is booked is booked as its hire says: same vehicle, same days. */
  async function isBookedAsItSays(): Promise<boolean> {
    const rows = await here.depot.store.hires.all({ stages: ["booked"] });
    const held = await Promise.all(rows.map(({ id }) => here.depot.store.bookings.of(id)));
    return rows.every((row, k) => held[k]?.vehicleId === row.vehicleId && held[k]?.to === row.to);
  }

  return { here, bookedHire, look, confirm, page, everything, isDoubleBooked, isBookedAsItSays };
}
