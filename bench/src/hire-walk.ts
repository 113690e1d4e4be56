import { type FilledDepot, fillDepot, NOW, platesOf, SOUGHT } from "./depot.ts";
import { type Line, lineOf } from "./line.ts";
import { measureByTurns } from "./measure.ts";

const [SMALL, LARGE] = [100, 10_000] as const;
const ROUNDS = 15;

interface Page {
  readonly name: string;
  /** through the API, as the desk asks it; the store alone where left out */
  readonly ask: (depot: FilledDepot) => Promise<unknown>;
}
/** Two at most, so that a small depot and a large one find alike many. */
const SHOWN = 2;
const find = (typed: string) => `/hires?limit=${SHOWN}&q=${encodeURIComponent(typed)}`;
const OPEN = ["enquiry", "quote", "booked", "handedOver", "onHire", "returned", "settled"] as const;

/** The pages on the way to a hire. */
const PAGES: readonly Page[] = [
  { name: "today", ask: ({ get }) => get("/today") },
  { name: "hires, first page", ask: ({ get }) => get("/hires") },
  { name: "search by name, one found", ask: ({ get }) => get(find(SOUGHT.name)) },
  { name: "search by plate, one vehicle", ask: ({ get }) => get(find(platesOf(7))) },
  { name: "search by a beginning that all share", ask: ({ get }) => get(find("inv")) },
  { name: "search by number, one found", ask: ({ get, soughtNumber }) => get(find(soughtNumber)) },
  { name: "the hire's page", ask: ({ get, soughtId }) => get(`/hires/${soughtId}`) },
];
/** What they ask of the store, without rooms and JSON, so that a missing index has nowhere to hide. */
const QUERIES: readonly Page[] = [
  { name: "store: hires in hand", ask: ({ store }) => store.hires.list({ stages: [...OPEN], limit: 200 }) },
  { name: "store: first page", ask: ({ store }) => store.hires.list({ limit: 25 }) },
  { name: "store: by name", ask: ({ store }) => store.hires.search(SOUGHT.name, { limit: SHOWN }) },
  { name: "store: by plate", ask: ({ store }) => store.hires.search(platesOf(7), { limit: SHOWN }) },
  {
    name: "store: by a beginning that all share",
    ask: ({ store }) => store.hires.search("inv", { limit: SHOWN }),
  },
  {
    name: "store: by number",
    ask: ({ store, soughtNumber }) => store.hires.search(soughtNumber, { limit: SHOWN }),
  },
  { name: "store: one hire with all that belongs to it", ask: readWhole },
  {
    name: "store: bookings of two months",
    ask: ({ store }) => store.bookings.between("2026-12-10T00:00Z", NOW.toISOString()),
  },
];

async function readWhole({ store, soughtId }: FilledDepot): Promise<void> {
  await store.hires.get(soughtId);
  await store.hires.parts(soughtId);
  await store.payments.ofHire(soughtId);
  await store.overrides.ofHire(soughtId);
  await store.records.list({ hireId: soughtId });
  await store.frozen.ofHire(soughtId);
  await store.bookings.of(soughtId);
  await store.audit.list({ about: soughtId });
}

async function walk(kind: "sqlite" | "postgres"): Promise<readonly Line[]> {
  const line = lineOf(
    `the way to a hire on ${kind === "sqlite" ? "SQLite" : "PostgreSQL"}, ${SMALL} and ${LARGE} hires`,
  );
  const start = performance.now();
  const small = await fillDepot(kind, SMALL);
  const large = await fillDepot(kind, LARGE).catch(async (error: unknown) => {
    await small.close();
    throw error;
  });
  const filled = (performance.now() - start) / 1000;
  try {
    const lines: Line[] = [];
    for (const { name, ask } of [...PAGES, ...QUERIES]) {
      const [few, many] = (await measureByTurns([() => ask(small), () => ask(large)], ROUNDS)) as [
        number,
        number,
      ];
      lines.push(
        line(name, many / few, "ratio", `${few.toFixed(2)} → ${many.toFixed(2)} ms, medians of ${ROUNDS}`),
      );
    }
    return [
      ...lines,
      line("filling both", filled, "s", "one by one through the store, 250 to a transaction"),
    ];
  } finally {
    await small.close();
    await large.close();
  }
}

/** Pages of the desk at 100 and at 10,000 hires; a ratio near 1 is an index at work, one near 100 a missing one. */
export async function benchHireWalk(): Promise<readonly Line[]> {
  const lines = [...(await walk("sqlite"))];
  if ((process.env.SETFAIR_TEST_DATABASE_URL ?? "") !== "") return [...lines, ...(await walk("postgres"))];
  const skipped = lineOf("the way to a hire on PostgreSQL");
  return [...lines, skipped("skipped", null, "", "SETFAIR_TEST_DATABASE_URL is not set")];
}
