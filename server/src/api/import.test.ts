import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readTable } from "../import/read-table.ts";
import { writeCsv } from "../import/write-csv.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";

const base64 = (text: string | Uint8Array) => Buffer.from(text as string).toString("base64");
const PEOPLE = [
  "name,telephone,email,address",
  'Ada Invented,01632 960001,ada@example.org,"1, Invented Street\nTown"',
  "Bo Invented,,bo@example.org,",
  "Cleo Invented,01632 960003,not an address,",
  "Ada Invented,01632 960001,ada@example.org,",
  "Dee Invented,01632 960004,dee@example.org,x,y",
].join("\n");
const hires = (...rows: string[]) =>
  ["name;telephone;email;from;to;adults;dogs;registration;stage;colour", ...rows].join("\r\n");

describe.each(testedStores())("comma-separated values on $kind", ({ kind }) => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot(kind);
  }, 60_000);
  afterAll(() => depot.close());
  const send = (what: string, file: string | Uint8Array, more: object = {}) =>
    depot.call("manager", "POST", `/import/${what}`, { file: base64(file), ...more });
  const customers = async () => (await depot.store.customers.search("", { limit: 200 })).rows.length;

  test("a dry run tells each row that is refused by line, column, value and what was expected, and changes nothing", async () => {
    const { body } = await send("customers", PEOPLE);
    expect(body).toMatchObject({ done: false, question: null, encoding: "utf-8", dateOrder: null });
    expect(body.accepted).toMatchObject([{ line: 2, title: "Ada Invented" }]);
    expect(body.rejected).toMatchObject(
      [
        { line: 4, column: "telephone", value: "", expected: /empty/ },
        { line: 5, column: "email", value: "not an address" },
        { line: 6, column: "name", value: "Ada Invented", expected: /not here yet/ },
        { line: 7, column: "", expected: /quote/ },
      ].map((each) => ({ ...each, expected: expect.stringMatching(each.expected ?? /./) })),
    );
    expect(await customers()).toBe(0);
    expect((await send("customers", PEOPLE, { confirm: { accepted: 2, rejected: 3 } })).body.error.code).toBe(
      "stale",
    );
    expect(await customers()).toBe(0);
    expect((await send("customers", PEOPLE, { confirm: { accepted: 1, rejected: 4 } })).body.done).toBe(true);
    expect(await customers()).toBe(1);
    expect((await send("customers", PEOPLE)).body.accepted).toEqual([]);
    expect((await depot.call("desk", "POST", "/import/customers", { file: base64(PEOPLE) })).status).toBe(
      403,
    );
  });

  test("UTF-8 with its mark is read; another encoding is asked about with a line that shows it, never guessed", async () => {
    const text = "name,telephone,email\nJürgen Müßig,01632 960005,j@example.org\n";
    expect((await send("customers", `\ufeff${text}`)).body.accepted[0].title).toBe("Jürgen Müßig");
    const old = Buffer.from(text, "latin1");
    const { body } = await send("customers", old);
    expect(body).toMatchObject({ done: false, accepted: [], question: { what: "encoding" } });
    expect(body.question.sample).toContain("Jürgen Müßig");
    const said = await send("customers", old, { encoding: "windows-1252" });
    expect(said.body.accepted[0].title).toBe("Jürgen Müßig");
    expect((await send("customers", old, { encoding: "utf-8" })).body.error.problems[0].path).toBe(
      "encoding",
    );
    expect((await send("customers", text, { encoding: "windows-1252" })).body.error.problems[0].path).toBe(
      "encoding",
    );
  });

  test("files that are none are refused by the field's name", async () => {
    const bad: (string | Uint8Array)[] = [
      "",
      "one,two\n1,2\n",
      "name,telephone,email,name\n",
      'name,telephone,email\n"never closed,1,2\n',
      Buffer.from("\ufeffname,telephone", "utf16le"),
      Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0]),
      `name,telephone,email\n${"x,1,2\n".repeat(5001)}`,
    ];
    for (const file of bad) {
      const answer = await send("customers", file);
      expect([answer.status, answer.body.error?.problems[0].path]).toEqual([400, "file"]);
    }
    const raw = await depot.call("manager", "POST", "/import/customers", { file: "***" });
    expect(raw.body.error.problems[0].path).toBe("file");
    const huge = await send("customers", new Uint8Array(10_000_001).fill(65));
    expect([huge.status, huge.body.error.code]).toEqual([413, "tooLarge"]);
  });

  test("days that could be read two ways are asked about; mixed ones are refused with a line of each", async () => {
    const row = (from: string, to: string) =>
      `Eve Invented;01632 960006;eve@example.org;${from};${to};2;0;;;red`;
    const asked = await send("hires", hires(row("03/07/2026 14:00", "06/07/2026 10:00")));
    expect(asked.body).toMatchObject({
      question: { what: "dateOrder", sample: "03/07/2026 14:00" },
      accepted: [],
    });
    const file = hires(row("03/07/2026 14:00", "06/07/2026 10:00"));
    const dmy = await send("hires", file, { dateOrder: "dmy" });
    expect(dmy.body.accepted[0].text).toContain("2026-07-03 14:00 – 2026-07-06 10:00");
    expect(dmy.body.ignored).toEqual(["colour"]);
    expect((await send("hires", file, { dateOrder: "mdy" })).body.accepted[0].text).toContain(
      "2026-03-07 14:00",
    );
    expect((await send("hires", hires(row("25.07.2026 14:00", "03.08.2026 10:00")))).body.dateOrder).toBe(
      "dmy",
    );
    for (const [from, to] of [
      ["2026-07-25 14:00", "01/08/2026 10:00"],
      ["25/07/2026 14:00", "08/25/2026 10:00"],
    ] as const) {
      const mixed = await send("hires", hires(row(from, to)));
      expect(mixed.body.error.problems[0]).toMatchObject({
        path: "file",
        expected: expect.stringContaining("line 2"),
      });
    }
    const wrong = await send(
      "hires",
      hires(row("2026-07-25", "2026-07-32 10:00"), row("2026-03-29 01:30", "2026-04-02 10:00")),
    );
    expect(wrong.body.rejected).toMatchObject([
      { line: 2, column: "from" },
      { line: 3, column: "from" },
    ]);
  });

  test("booked hires take their vehicle: two for the same days leave one, and none comes in twice", async () => {
    const row = (name: string, from: string, to: string, rest: string) =>
      `${name};01632 960007;${name.toLowerCase()}@example.org;${from};${to};2;1;${rest}`;
    const { registration } = (await depot.call("desk", "GET", "/vehicles/pv2")).body.summary;
    const file = hires(
      row("Flo", "2026-08-03 14:00", "2026-08-10 10:00", `${registration.toLowerCase()};booked;`),
      row("Gus", "2026-08-10 12:00", "2026-08-12 10:00", `${registration};booked;`),
      row("Hal", "2026-08-12 14:00", "2026-08-11 10:00", `${registration};booked;`),
      row("Ida", "2026-08-12 14:00", "2026-08-14 10:00", "NO SUCH;booked;"),
      row("Jo", "2026-08-12 14:00", "2026-08-14 10:00", ";booked;"),
      row("Kit", "2026-08-12 14:00", "2026-08-14 10:00", ";;"),
    );
    const dry = (await send("hires", file)).body;
    expect(dry.accepted.map(({ line }: { line: number }) => line)).toEqual([2, 7]);
    expect(dry.rejected).toMatchObject([
      { line: 3, column: "registration", expected: expect.stringContaining("turnaround") },
      { line: 4, column: "to" },
      { line: 5, column: "registration" },
      { line: 6, column: "registration" },
    ]);
    expect((await depot.store.hires.list({})).rows).toEqual([]);
    expect((await send("hires", file, { confirm: { accepted: 2, rejected: 4 } })).body.done).toBe(true);
    const [flo] = (await depot.store.hires.list({ stages: ["booked"] })).rows;
    expect((await depot.call("desk", "GET", `/hires/${flo?.id}`)).body.hire).toMatchObject({
      customer: "Flo",
      dogs: 1,
    });
    expect((await depot.store.bookings.of(flo?.id ?? ""))?.vehicleId).toBe("pv2");
    expect((await send("hires", file)).body.accepted).toEqual([]);
  });

  test("vehicles come in as drafts to be described, each plate once", async () => {
    const file =
      "Registration,Name,Body style,MAM kg,First registered\nTE57 AAA,Wren,low profile,3500,2019-03-01\nte57aaa,Wren,lowProfile,,\nTE57 BBB,Dove,spaceship,,\nTE57 CCC,Rook,overcab,3.5,\nSF26 SKN,Twin,overcab,,\n";
    const dry = (await send("vehicles", file)).body;
    expect(dry.rejected.map(({ line, column }: { line: number; column: string }) => [line, column])).toEqual([
      [3, "registration"],
      [4, "bodyStyle"],
      [5, "mamKg"],
      [6, "registration"],
    ]);
    await send("vehicles", file, { confirm: { accepted: 1, rejected: 4 } });
    const { drafts } = (await depot.call("desk", "GET", "/vehicle-drafts")).body;
    expect(drafts).toMatchObject([{ registration: "TE57 AAA", bodyStyle: "lowProfile", mamKg: 3500 }]);
    expect((await depot.call("manager", "DELETE", `/vehicle-drafts/${drafts[0].id}`)).status).toBe(200);
    expect((await depot.call("manager", "DELETE", `/vehicle-drafts/${drafts[0].id}`)).status).toBe(404);
  });

  test("an export holds no formula, and what comes out goes in again unchanged", async () => {
    await depot.store.customers.create({
      name: '=HYPERLINK("http://example.org")',
      document: { telephone: "+44 1632 960009", email: "x@example.org", address: "@home, -1" },
    });
    const answer = await depot.app.inject({
      method: "GET",
      url: "/api/export/customers",
      headers: { cookie: depot.cookie("manager") },
    });
    expect(answer.headers["content-type"]).toContain("text/csv");
    for (const cell of answer.body.split(/[\r\n]+/).flatMap((line) => line.split(",")))
      expect(cell.replace(/^\ufeff?"?/, "")).not.toMatch(/^[=+@\t\r-]/);
    const columns = { needed: ["name", "telephone", "email"], other: ["address"] };
    const table = readTable(Buffer.from(answer.body), columns, null);
    expect("rows" in table && table.rows.at(-1)?.values).toBeDefined();
    const found =
      "rows" in table ? table.rows.find(({ values }) => values.email === "x@example.org") : undefined;
    expect(found?.values).toEqual({
      name: '=HYPERLINK("http://example.org")',
      telephone: "+44 1632 960009",
      email: "x@example.org",
      address: "@home, -1",
    });
  });
});

test("any text goes out and comes back the same, but for what no cell holds", () => {
  // a cell is trimmed, and an apostrophe before a formula sign is ours
  const cell = fc
    .string({ unit: "grapheme", maxLength: 30 })
    .map((text) =>
      text
        .replaceAll(/[\p{C}\r\n]/gu, "")
        .trim()
        .replace(/^\ufeff/, ""),
    )
    .filter((text) => !/^'[=+\-@]/.test(text) && !/^[＝＋－＠]/.test(text));
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (rows) => {
      const full = rows.map(([a, b]) => [`x${a}`, b]);
      const columns = { needed: ["a", "b"], other: [] };
      const table = readTable(Buffer.from(writeCsv(["a", "b"], full)), columns, null);
      expect("rows" in table && table.rows.map(({ values }) => [values.a, values.b])).toEqual(full);
    }),
    { numRuns: 200 },
  );
});
