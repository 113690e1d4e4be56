import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { bookHire, makeRound } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

// A hire as it reads long before its keys, at them, and past the time it was due back.

describe("what a hire says of itself", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  }, 60_000);
  afterAll(() => depot.close());

  const ask = async (method: "GET" | "POST", path: string, body?: unknown) => {
    const answer = await depot.call("desk", method, path, body);
    expect(answer.status, JSON.stringify(answer.body)).toBeLessThan(300);
    return answer.body;
  };

  it("months before the keys nothing stands against it, and eleven of thirteen gates are said to come later", async () => {
    const asked = {
      customer: CUSTOMER,
      party: PARTY,
      from: "2027-03-03T13:00",
      to: "2027-03-08T10:00",
      vehicleId: "pv2",
    };
    const { hire, glass } = await ask("POST", "/hires", asked);
    expect(glass.state).toBe("ready");
    // seats and diary are asked at once; the signatures are not counted, they are given with the keys
    expect(glass.gates.filter(({ isDue }: { isDue: boolean }) => !isDue)).toHaveLength(11);
    expect(hire.gatesLater).toBe(10);
  });

  it("at the keys no gate comes later; past its time back, the next move is the desk's", async () => {
    const id = await bookHire(depot);
    depot.at("2026-07-03T10:30:00.000Z");
    const due = await ask("GET", `/hires/${id}`);
    expect(due.hire.gatesLater).toBe(0);
    const { records } = await makeRound(depot, id, "out", { on: "2026-07-03" });
    expect((await depot.call("yard", "POST", "/records", { records })).status).toBe(200);
    depot.at("2026-07-03T11:20:00.000Z");
    await ask("POST", `/hires/${id}/keys`);
    const away = await ask("GET", `/hires/${id}`);
    expect(away.waits.at(-1)).toMatchObject({ code: "onTheRoad", whose: "hirer" });
    depot.at("2026-07-06T09:05:00.000Z");
    const page = await ask("GET", `/hires/${id}`);
    expect(page.waits.at(-1)).toMatchObject({ code: "late", whose: "desk" });
    expect(page.hire).toMatchObject({ late: "back", gatesLater: 0 });
  });
});
