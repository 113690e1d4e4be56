import { MARK_KINDS, type Terms } from "@setfair/engine";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { asDocument, toJson } from "../desk/documents.ts";
import { type PriceLists, repairKey } from "../desk/firm-prices.ts";
import { readPriceList, writePriceList } from "../import/price-lists.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { must, problem, STORES } from "./settlement-for-tests.ts";

const LEAD = { newPence: 7000, lifeYears: 6, leastShare: 0.1 };
const bytes = (text: string) => new TextEncoder().encode(text);

describe.each(STORES)("what things are worth and repairs cost, on $kind", ({ kind }) => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot(kind);
    depot.at("2026-07-01T09:00:00.000Z");
  });
  afterAll(() => depot.close());

  const prices = () => must(depot.call("manager", "GET", "/terms/prices"));
  const put = (body: object, basedOn?: string, as: "manager" | "desk" = "manager") =>
    depot.call(as, "PUT", `/terms/prices${basedOn === undefined ? "" : `?basedOn=${basedOn}`}`, body);
  const termsOn = async (day: string) =>
    asDocument<Terms>((await depot.store.terms.on("hire", day))?.document ?? {});
  const listsOn = async (day: string): Promise<PriceLists> => {
    const { kit, damage } = (await termsOn(day)).tariff;
    return { kit, damage };
  };
  const leadOn = async (day: string) => (await listsOn(day)).kit["hookUp.leads"]?.newPence;

  it("shows every line with the day since which it holds, and what the fleet counts without a value", async () => {
    const found = await prices();
    const { kit, damage } = await listsOn("2026-07-01");
    expect(found.kit.map(({ id }: { id: string }) => id)).toEqual(Object.keys(kit));
    expect(found.repairs).toHaveLength(damage.length);
    expect(found.kit[0].since).toEqual({ from: "2026-01-01", by: null });
    expect(found.today).toMatchObject({ validFrom: "2026-01-01" });
    expect(found.counted.every(({ pricedBy }: { pricedBy: string | null }) => pricedBy !== null)).toBe(true);
    expect(found.changes).toHaveLength(1);
  });

  it("is for a manager to change, from today or later, one price a line, on what was read", async () => {
    const { newest } = await prices();
    const { kit, damage } = await listsOn("2026-07-01");
    const body = { validFrom: "2026-07-01", kit, damage };
    expect((await put(body, newest, "desk")).status).toBe(403);
    expect(await problem(put({ ...body, validFrom: "2026-06-30" }))).toEqual([400, "validFrom"]);
    const [first] = damage;
    expect(await problem(put({ ...body, damage: [...damage, first] }))).toEqual([
      400,
      `damage.${damage.length}`,
    ]);
    const wrong = { ...kit, "hookUp.leads": { ...LEAD, newPence: 1.5 } };
    expect(await problem(put({ ...body, kit: wrong }))).toEqual([400, "kit.hookUp.leads.newPence"]);
    expect((await put(body, "another")).status).toBe(409);
    expect((await prices()).newest).toBe(newest);
  });

  it("keeps a new version from its day on, leaves the rest of the terms alone, and later versions with the old lists follow", async () => {
    const before = await termsOn("2026-07-01");
    const own = { ...before.tariff, kit: { "keys.count": LEAD } };
    const autumn = { ...before, id: "autumn", validFrom: "2026-09-01", maximumNights: 30 };
    const winter = { ...before, id: "winter", validFrom: "2026-12-01", tariff: own };
    for (const terms of [autumn, winter])
      await depot.store.terms.put({ of: "hire", validFrom: terms.validFrom, document: toJson(terms) });
    const { later, newest } = await prices();
    expect(later).toMatchObject([
      { validFrom: "2026-09-01", like: 0 },
      { validFrom: "2026-12-01", like: 1 },
    ]);
    const { damage } = before.tariff;
    const kit = { ...before.tariff.kit, "hookUp.leads": LEAD };
    const answer = await must(put({ validFrom: "2026-08-01", kit, damage }, newest));
    const leads = [await leadOn("2026-07-31"), await leadOn("2026-08-01"), await leadOn("2026-09-02")];
    expect(leads).toEqual([6200, 7000, 7000]);
    expect(await listsOn("2026-12-02")).toEqual({ kit: own.kit, damage });
    const { id: _, validFrom: __, tariff: ___, ...rest } = await termsOn("2026-08-01");
    expect(before).toMatchObject(rest);
    expect(await termsOn("2026-09-02")).toMatchObject({ id: "autumn", maximumNights: 30 });
    expect(answer.changes[0]).toMatchObject({
      by: "Pat Manager",
      lines: [{ list: "kit", name: "hookUp.leads", wasPence: 6200, isPence: 7000 }],
    });
    depot.at("2026-09-03T09:00:00.000Z");
    const lead = (await prices()).kit.find(({ id }: { id: string }) => id === "hookUp.leads");
    expect(lead).toMatchObject({ newPence: 7000, since: { from: "2026-08-01", by: "Pat Manager" } });
  });

  it("says of a thing that is taken out that it had a price, and of the fleet that none is entered", async () => {
    const { newest } = await prices();
    const { kit, damage } = await listsOn("2026-09-03");
    const { "hookUp.leads": _, missingItem: __, ...others } = kit;
    const answer = await must(put({ validFrom: "2026-09-03", kit: others, damage: damage.slice(1) }, newest));
    const [change] = answer.changes;
    expect(change.lines).toContainEqual({
      list: "kit",
      name: "hookUp.leads",
      kind: null,
      upToMm: null,
      wasPence: 7000,
      isPence: null,
    });
    expect(change.lines.filter(({ list }: { list: string }) => list === "repairs")).toHaveLength(1);
    const lead = answer.counted.find(({ checkId }: { checkId: string }) => checkId === "hookUp.leads");
    expect(lead).toMatchObject({ pricedBy: null, systemKind: "hookUp" });
  });

  it("a rate card that is kept from a later day leaves the prices of that day, where it is told to", async () => {
    const winter = await termsOn("2026-12-02");
    const card = { ...(await termsOn("2026-09-03")), id: "spring", validFrom: "2027-02-01", quoteDays: 9 };
    const keep = (body: object) => must(depot.call("manager", "PUT", "/terms", body));
    await keep({ hire: card, pricesStay: true });
    expect(await termsOn("2027-02-02")).toMatchObject({ id: "spring", quoteDays: 9 });
    expect((await listsOn("2027-02-02")).kit).toEqual(winter.tariff.kit);
    await keep({ hire: { ...card, id: "as-sent" } });
    expect((await listsOn("2027-02-02")).kit).toEqual(card.tariff.kit);
    expect(card.tariff.kit).not.toEqual(winter.tariff.kit);
  });

  it("gives a list as a file, and reads one without keeping it", async () => {
    const file = await depot.app.inject({
      url: "/api/terms/prices/lists/repairs",
      headers: { cookie: depot.cookie("manager") },
    });
    const { newest, repairs } = await prices();
    const sent = { file: Buffer.from(file.rawPayload).toString("base64") };
    const read = await must(depot.call("manager", "POST", "/terms/prices/lists/repairs", sent));
    expect(read).toMatchObject({ question: null, ignored: ["name"], rejected: [] });
    expect(read.repairs).toHaveLength(repairs.length);
    expect((await prices()).newest).toBe(newest);
  });
});

const wear = {
  lifeYears: fc.integer({ min: 1, max: 400 }).map((n) => n / 10),
  leastShare: fc.integer({ min: 0, max: 10_000 }).map((n) => n / 10_000),
};
const pence = fc.integer({ min: 0, max: 100_000_000 });
const things = fc.constantFrom("hookUp.leads", "awning", "damage", "body.windscreen", "keys.count");

describe("price lists as comma-separated values", () => {
  it("whatever is written is read again as it was, to the penny", () => {
    const kits = fc.dictionary(things, fc.record({ newPence: pence, ...wear }), { maxKeys: 5 });
    const rows = fc.uniqueArray(
      fc.record(
        {
          of: things,
          kind: fc.constantFrom(...MARK_KINDS),
          upToMm: fc.integer({ min: 1, max: 5000 }),
          pence,
          part: fc.constantFrom("repair" as const, "replace" as const),
          ...wear,
        },
        { requiredKeys: ["of", "kind", "pence", "part", "lifeYears", "leastShare"] },
      ),
      { selector: repairKey, maxLength: 8 },
    );
    fc.assert(
      fc.property(kits, rows, (kit, damage) => {
        const lists = { kit: { ...kit }, damage };
        const again = (list: "kit" | "repairs") =>
          readPriceList(list, bytes(writePriceList(lists, list)), null);
        expect(again("kit")).toMatchObject({ rejected: [] });
        expect(again("kit").kit).toEqual(lists.kit);
        expect(again("repairs").rejected).toEqual([]);
        expect(again("repairs").repairs).toEqual(damage);
      }),
    );
  });

  it("finds a thing by its name as well, and refuses each other row by line, column and what was expected", () => {
    const read = readPriceList(
      "kit",
      bytes(
        [
          "Thing;New value;Life years;Least percent;Currency",
          "Hook-up leads;62.50;6;10;gbp",
          "kettle of gold;62.50;6;10;GBP",
          "awning;62,50;6;10;",
          "awning;62.50;41;10;",
          "awning;62.50;6;101;",
          "awning;62.50;6;10;EUR",
          "hookUp.leads;1;6;10;",
          "awning;;6;10;",
        ].join("\n"),
      ),
      null,
    );
    expect(read.kit).toEqual({ "hookUp.leads": { newPence: 6250, lifeYears: 6, leastShare: 0.1 } });
    expect(read.rejected.map(({ line, column }) => [line, column])).toEqual([
      [3, "thing"],
      [4, "newValue"],
      [5, "lifeYears"],
      [6, "leastPercent"],
      [7, "currency"],
      [8, "thing"],
      [9, "newValue"],
    ]);
    for (const { expected } of read.rejected) expect(expected).not.toBe("");
  });

  it("a repair that replaces nothing needs no life, a new part does", () => {
    const rows = ["thing,damage,price,work,upToMm", "awning,tear,140,repair,80", "awning,tear,620,replace,"];
    const read = readPriceList("repairs", bytes(rows.join("\n")), null);
    expect(read.repairs).toMatchObject([
      { of: "awning", kind: "tear", upToMm: 80, pence: 14_000, part: "repair" },
    ]);
    expect(read.rejected).toMatchObject([{ line: 3, column: "lifeYears", value: "" }]);
  });
});
