import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { crewOf } from "../desk/crew.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";

describe("the depot's own settings", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  const read = async () => (await depot.call("manager", "GET", "/depot")).body;
  const put = async (change: object) => {
    const { timeZone: _, country: __, ...settings } = await read();
    return depot.call("manager", "PUT", "/depot", { ...settings, ...change });
  };

  it("begin with a usual team and are changed whole; nothing else of the depot is lost", async () => {
    expect((await read()).crew).toEqual({ desk: 2, cleaner: 2, yard: 2, technician: 1 });
    const crew = { desk: 1, cleaner: 3, yard: 2, technician: 0 };
    const answer = await put({ crew, turnaroundMinutes: 200 });
    expect(answer.body).toMatchObject({ crew, turnaroundMinutes: 200, country: "GB" });
    const { document } = await depot.store.depot.get();
    expect(document).toMatchObject({ latitudeDeg: 54.4, crew });
    expect(crewOf({ crew: { cleaner: 4 } })).toEqual({ desk: 2, cleaner: 4, yard: 2, technician: 1 });
  });

  it("its place and what it reads distances in can be put right; a height of another place is dropped", async () => {
    const { version, document } = await depot.store.depot.get();
    await depot.store.depot.update({ document: { ...document, elevationM: 80 } }, version);
    await put({ distances: "mi" });
    expect((await depot.store.depot.get()).document).toMatchObject({ elevationM: 80, distances: "mi" });
    expect((await put({ latitudeDeg: 54.6, longitudeDeg: -3.1 })).status).toBe(200);
    expect((await depot.store.depot.get()).document).not.toHaveProperty("elevationM");
    const { body } = await depot.call("desk", "GET", "/session");
    expect(body.depot).toMatchObject({ distances: "mi", place: { latitudeDeg: 54.6, longitudeDeg: -3.1 } });
    expect((await depot.call("yard", "GET", "/yard/jobs")).body.distances).toBe("mi");
    const problems = (await put({ latitudeDeg: 5 })).body.error.problems;
    expect(problems).toEqual([{ path: "latitudeDeg", expected: "at least 34" }]);
  });

  it("a manager is told what a new firm has still to enter, until it is entered", async () => {
    const steps = async () => (await depot.call("manager", "GET", "/first-steps")).body;
    expect(await steps()).toEqual({ open: ["firm"], of: 6 });
    await depot.call("manager", "PUT", "/money/firm", {
      name: "Invented Hire",
      address: "3 Invented Row",
      vatNumber: null,
    });
    expect((await steps()).open).toEqual([]);
    const prices = { validFrom: "2099-01-01", kit: {}, damage: [] };
    const today = (await depot.call("manager", "GET", "/session")).body.today;
    await depot.call("manager", "PUT", "/terms/prices", { ...prices, validFrom: today });
    expect((await steps()).open).toEqual(["prices"]);
    expect((await depot.call("desk", "GET", "/first-steps")).status).toBe(403);
  });

  it("school holidays stand in the diary", async () => {
    const schoolHolidays = [
      { from: "2026-10-24", to: "2026-11-01" },
      { from: "2026-07-22", to: "2026-09-01" },
    ];
    expect((await put({ schoolHolidays })).status).toBe(200);
    const diary = await depot.call("desk", "GET", "/diary?from=2026-08-01&to=2026-08-31");
    expect(diary.body.schoolHolidays).toEqual([{ from: "2026-07-22", to: "2026-09-01" }]);
  });

  it("name the field that does not fit, and refuse what was changed meanwhile or by someone else", async () => {
    const problems = async (change: object) => (await put(change)).body.error.problems;
    const { hours } = await read();
    const onSaturday = (saturday: object | null) => ({
      hours: { ...hours, week: { ...hours.week, saturday } },
    });
    expect(await problems(onSaturday({ opens: "09:00", closes: "08:00" }))).toMatchObject([
      { path: "hours.week.saturday.closes" },
    ]);
    expect(await problems(onSaturday({ opens: "09:00", closes: "24:01" }))).toMatchObject([
      { path: "hours.week.saturday.closes" },
    ]);
    const closed = [{ from: "2026-12-26", to: "2026-12-25", name: "Christmas" }];
    expect(await problems({ hours: { ...hours, closed } })).toMatchObject([{ path: "hours.closed.0.to" }]);
    expect(await problems({ schoolHolidays: [{ from: "2026-08-02", to: "2026-08-01" }] })).toMatchObject([
      { path: "schoolHolidays.0.to" },
    ]);
    expect(await problems({ crew: { desk: 1, cleaner: -1, yard: 1, technician: 1 } })).toMatchObject([
      { path: "crew.cleaner" },
    ]);
    expect((await put({ version: 1 })).status).toBe(409);
    const { timeZone: _, country: __, ...settings } = await read();
    expect((await depot.call("desk", "PUT", "/depot", settings)).status).toBe(403);
  });
});
