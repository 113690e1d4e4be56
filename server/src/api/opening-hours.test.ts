import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { TEST_DATABASE_URL } from "../store/stores-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

const kinds = ["sqlite", ...(TEST_DATABASE_URL === "" ? [] : ["postgres"])] as ("sqlite" | "postgres")[];
describe.each(kinds)("opening hours by the day of the week, on %s", (kind) => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot(kind);
  });
  afterAll(() => depot.close());

  const ask = async (method: "GET" | "POST" | "PUT", path: string, body?: object) => {
    const answer = await depot.call("manager", method, path, body);
    if (answer.status !== 200) throw new Error(`${path}: ${JSON.stringify(answer.body)}`);
    return answer.body;
  };
  const putHours = async (week: object, closed: object[] = []) => {
    const { timeZone: _, country: __, ...settings } = await ask("GET", "/depot");
    const hours = { week: { ...settings.hours.week, ...week }, closed };
    return ask("PUT", "/depot", { ...settings, hours });
  };
  const hire = (from: string, to: string) =>
    ask("POST", "/hires", { customer: CUSTOMER, party: PARTY, from, to, vehicleId: "pv2" });
  const diaryGate = (page: { glass: { gates: { gate: string; state: string; findings: object[] }[] } }) =>
    page.glass.gates.find(({ gate }) => gate === "diary");

  it("are kept as entered, closed days in order, and stand in the diary", async () => {
    const week = {
      saturday: { opens: "09:00", closes: "12:30" },
      sunday: null,
      friday: { opens: "10:00", closes: "24:00" },
    };
    const closed = [
      { from: "2026-12-24", to: "2026-12-26", name: "Christmas" },
      { from: "2026-08-31", to: "2026-08-31", name: "" },
    ];
    const { hours } = await putHours(week, closed);
    expect(hours.week).toMatchObject(week);
    expect(hours.closed).toEqual([closed[1], closed[0]]);
    expect((await ask("GET", "/depot")).hours).toEqual(hours);
    expect((await ask("GET", "/diary?from=2026-08-01&to=2026-08-31")).hours).toEqual(hours);
  });

  it("keys on a closed day or out of hours are asked about; with a reason, for that very time, it is overridden", async () => {
    // out on a Saturday afternoon, back on a Sunday
    const { hire: row } = await hire("2026-07-11T14:00", "2026-07-19T10:00");
    const path = `/hires/${row.id}`;
    const gate = diaryGate(await ask("GET", path));
    const codes = gate?.findings.map((each) => (each as { finding: { code: string } }).finding.code);
    expect(codes).toEqual(["diary.closedOut", "diary.closedBack"]);
    const open = { gate: "diary", reason: "Old customer; Pat comes in for it" };
    await ask("POST", `${path}/overrides`, { ...open, code: "diary.closedOut", about: "2026-07-11T14:00" });
    const page = await ask("POST", `${path}/overrides`, {
      ...open,
      code: "diary.closedBack",
      about: "2026-07-19T10:00",
    });
    expect(diaryGate(page)?.state).toBe("overridden");
    // the yard may see it, but it is not theirs to say
    const byYard = { ...open, code: "diary.closedOut", about: "2026-07-11T14:00" };
    expect((await depot.call("yard", "POST", `${path}/overrides`, byYard)).status).toBe(403);
  });

  it("within the hours nothing is asked, the last minute and midnight included", async () => {
    for (const [from, to] of [
      ["2026-07-17T10:00", "2026-07-25T12:30"],
      ["2026-07-31T23:59", "2026-08-08T00:00"],
    ] as const) {
      const { hire: row } = await hire(from, to);
      expect(diaryGate(await ask("GET", `/hires/${row.id}`))?.findings).toEqual([]);
    }
  });
});
