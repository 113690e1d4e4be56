import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { USUAL_TIMES } from "../desk/depot-times.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { bookHire } from "./lived-hire-for-tests.ts";
import { must, problem } from "./settlement-for-tests.ts";

describe("how long things take at a depot, and from when gates count", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  const read = () => must(depot.call("desk", "GET", "/depot/times"));
  const put = (body: object, basedOn?: string, as: "manager" | "desk" = "manager") =>
    depot.call(as, "PUT", `/depot/times${basedOn === undefined ? "" : `?basedOn=${basedOn}`}`, body);

  it("are the usual ones until a manager enters others", async () => {
    const { times, usual, version } = await read();
    expect(times).toEqual(usual);
    expect(times).toEqual(USUAL_TIMES);
    expect((await put(times, version, "desk")).status).toBe(403);
    const wrong = { ...times, jobMinutes: { ...times.jobMinutes, wetClean: -1 } };
    expect(await problem(put(wrong))).toEqual([400, "jobMinutes.wetClean"]);
    expect(await problem(put({ ...times, leadHours: { ...times.leadHours, money: 9000 } }))).toEqual([
      400,
      "leadHours.money",
    ]);
  });

  it("decide from when a gate counts, and how long the demonstration has", async () => {
    const id = await bookHire(depot);
    const money = async () => {
      const { glass } = await must(depot.call("desk", "GET", `/hires/${id}`));
      const { dueAt } = glass.gates.find(({ gate }: { gate: string }) => gate === "money");
      return Date.parse(dueAt) / 3_600_000;
    };
    const slot = async () =>
      (await must(depot.call("desk", "GET", `/hires/${id}/briefing`))).result.minutes.value;
    const [before, told] = [await money(), await slot()];
    expect(USUAL_TIMES.leadHours.money).toBe(48);
    const { times, version } = await read();
    const demonstrationMinutes = { first: 20, some: 15, knowsThisVehicle: 10 };
    const changed = { ...times, demonstrationMinutes, leadHours: { ...times.leadHours, money: 120 } };
    await must(put(changed, version));
    expect(before - (await money())).toBe(120 - 48);
    expect(await slot()).toBeLessThan(told);
    // whoever began from the times before does not write over them
    expect((await put(times, version)).status).toBe(409);
    expect((await read()).times).toEqual(changed);
  });

  it("stay when the depot's other settings change", async () => {
    const { times } = await read();
    const { timeZone: _, country: __, ...settings } = await must(depot.call("manager", "GET", "/depot"));
    await must(depot.call("manager", "PUT", "/depot", { ...settings, turnaroundMinutes: 200 }));
    expect((await read()).times).toEqual(times);
  });
});
