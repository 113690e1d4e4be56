import { addDays } from "@setfair/engine";
import { type Store, toJson } from "@setfair/server";

interface ShelfItem {
  readonly kind: string;
  readonly name: string;
  readonly size?: string;
  readonly count?: number;
  /** days from today to its last day */
  readonly goodForDays?: number;
  readonly puts?: readonly string[];
  readonly vehicleId?: string;
}

const numbered = (kind: string, word: string, count: number): readonly ShelfItem[] =>
  Array.from({ length: count }, (_, k) => ({ kind, name: `${word} ${k + 1}` }));

const KIT = ["vest", "triangle", "twoTriangles", "firstAid", "ukSticker", "beamDeflectors", "spareBulbs"];

/** What the invented firm has on its shelf; one seat is out of date and one kit soon will be. */
const SHELF: readonly ShelfItem[] = [
  { kind: "childRestraint", name: "Seat 1", size: "40-105 cm", goodForDays: 900 },
  { kind: "childRestraint", name: "Seat 2", size: "100-150 cm", goodForDays: 1300 },
  { kind: "childRestraint", name: "Seat 3", size: "100-150 cm", goodForDays: 40 },
  { kind: "childRestraint", name: "Seat 4", size: "100-150 cm", goodForDays: -20 },
  ...numbered("bikeRack", "Rack", 3),
  { kind: "snowChains", name: "Chains A", size: "225/75 R16", count: 2 },
  { kind: "snowChains", name: "Chains B", size: "215/70 R15" },
  { kind: "bedding", name: "Linen sets", count: 24 },
  { kind: "cot", name: "Cots", count: 3 },
  { kind: "europeKit", name: "Kit 1", puts: KIT, goodForDays: 700 },
  { kind: "europeKit", name: "Kit 2", puts: KIT, goodForDays: 700 },
  { kind: "europeKit", name: "Kit 3", puts: KIT, goodForDays: 35 },
  { kind: "firstAidKit", name: "First-aid kits", count: 4, puts: ["firstAid"], goodForDays: 400 },
  ...numbered("tollTag", "Tag", 2),
  { kind: "gasAdaptor", name: "Dish adaptors", count: 3, puts: ["adaptor.dish"] },
  { kind: "gasAdaptor", name: "Threaded adaptors", count: 3, puts: ["adaptor.acme"] },
  { kind: "gasAdaptor", name: "Bayonet adaptors", count: 3, puts: ["adaptor.bayonet"] },
];

interface Filling {
  readonly store: Store;
  readonly by: string;
  readonly today: string;
}

/** Puts the shelf there, lets a few booked hires hold things of it, and puts two enquiries on the waiting list. */
export async function putStock({ store, by, today }: Filling, vehicleIds: readonly string[]): Promise<void> {
  const papers = vehicleIds.slice(0, 2).map((vehicleId, k) => ({
    kind: "onHireCertificate",
    name: `Certificate ${k + 1}`,
    goodForDays: 200,
    vehicleId,
  }));
  const ids: string[] = [];
  for (const item of [...SHELF, ...papers]) ids.push(await putItem({ store, by, today }, item));
  const racks = ids.slice(4, 7);
  const booked = await store.hires.list({
    stages: ["booked"],
    startsFrom: `${today}T00:00:00.000Z`,
    limit: 3,
  });
  for (const [k, hire] of booked.rows.entries()) {
    const itemId = racks[k];
    if (itemId !== undefined) await store.stock.replaceHolds(hire.id, hire, [{ itemId, count: 1 }]);
  }
  const asking = await store.hires.list({
    stages: ["enquiry"],
    startsFrom: `${today}T00:00:00.000Z`,
    limit: 2,
  });
  for (const [k, hire] of asking.rows.entries()) {
    const waiting = { since: hire.createdAt, classes: [], flexDays: k * 2 };
    await store.hires.putPart(hire.id, "waiting", toJson(waiting), 0, by);
  }
}

async function putItem({ store, by, today }: Filling, item: ShelfItem): Promise<string> {
  const { kind, name, size, count = 1, goodForDays, puts = [], vehicleId } = item;
  const paper = vehicleId === undefined ? {} : { vehicleId, validFrom: addDays(today, -30) };
  const { id } = await store.stock.addItem({
    kind,
    name,
    size: size ?? null,
    count,
    expiresOn: goodForDays === undefined ? null : addDays(today, goodForDays),
    retiredOn: null,
    document: toJson({ puts, ...paper }),
  });
  await store.stock.addEvent({ itemId: id, act: "added", document: {}, by });
  return id;
}
