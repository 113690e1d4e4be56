import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { liveHire } from "./lived-hire-for-tests.ts";

describe("the money of a hire that is over", () => {
  let depot: TestDepot;
  let id = "";
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const { status, body } = await depot.call(...args);
    expect(status, JSON.stringify(body)).toBe(200);
    return body;
  };
  const pay = (body: object) =>
    depot.call("desk", "POST", `/hires/${id}/payments`, { on: "2026-07-06", method: "card", ...body });
  const money = () => must("desk", "GET", `/hires/${id}/money`);
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    ({ id } = await liveHire(depot));
  });
  afterAll(() => depot.close());

  it("can be undone as long as nothing rests on it, and what did not move cannot have failed", async () => {
    const undoable = async () =>
      (await money()).undoable
        .map((each: { id: string; failed: boolean }) => `${each.id} ${each.failed}`)
        .toSorted();
    expect(await undoable()).toEqual(["pay-depositHeld true", "pay-payment true"]);
    const refund = { id: "back", of: "pay-payment", pence: 100, on: "2026-07-06", reason: "Goodwill" };
    await must("desk", "POST", `/hires/${id}/money/refunds`, refund);
    const fine = { id: "fine", kind: "charge", line: "fine", pence: 6000, on: "2026-07-06", note: "Lane" };
    await must("desk", "POST", `/hires/${id}/money/charges`, fine);
    expect(await undoable()).toEqual(["back true", "fine false", "pay-depositHeld true"]);
    expect(
      (await pay({ id: "part", kind: "depositReleased", pence: 500, of: "pay-depositHeld" })).status,
    ).toBe(200);
    expect(await undoable()).toEqual(["back true", "fine false", "part true"]);
  });

  it("a hold on a card that stands may be charged, one that has lapsed not; each is charged by itself", async () => {
    const hold = (holdId: string, on: string) =>
      pay({ id: holdId, kind: "depositHeld", method: "cardHold", pence: 10_000, on });
    // the terms let a hold stand for 28 days
    expect((await hold("old", "2026-06-01")).status).toBe(200);
    expect((await hold("new", "2026-07-01")).status).toBe(200);
    const charge = (of: string) => pay({ id: `charge-${of}`, kind: "depositCharged", pence: 2500, of });
    expect((await charge("old")).body.error.problems).toEqual([
      { path: "of", expected: "expected a hold that has not lapsed" },
    ]);
    expect((await charge("new")).status).toBe(200);
    const { holds } = await money();
    expect(
      holds.map(({ id: of, state, amount }: { id: string; state: string; amount: { pence: number } }) => [
        of,
        state,
        amount.pence,
      ]),
    ).toEqual([
      ["new", "stands", 7500],
      ["old", "lapsed", 10_000],
    ]);
  });

  it("stands in the accountant's file by day, with the hire and its hirer on every row", async () => {
    await must("desk", "POST", `/hires/${id}/invoices`);
    depot.at("2026-07-08T08:00:00.000Z");
    expect(
      (await pay({ id: "late", kind: "payment", pence: 6000, on: "2026-07-08", note: "By card reader" }))
        .status,
    ).toBe(200);
    const { headers, body } = await depot.app.inject({
      method: "GET",
      url: "/api/money/postings?from=2026-06-01&to=2026-07-31",
      headers: { cookie: depot.cookie("manager") },
    });
    expect(headers["content-type"]).toContain("text/csv");
    const rows: Record<string, string>[] = parse(body, { columns: true, bom: true });
    const dates = rows.map(({ date }) => date ?? "");
    expect(dates).toEqual(dates.toSorted());
    expect(new Set(dates)).toEqual(new Set(["2026-07-01", "2026-07-06", "2026-07-08"]));
    // the invoice of the 6th stands before the payment of the 8th
    const { reference } = (await must("desk", "GET", `/hires/${id}`)).hire;
    expect(new Set(rows.map((row) => `${row.hire} ${row.customer}`)).size).toBe(1);
    const noted = rows.filter(({ note }) => note === "By card reader").map(({ date }) => date);
    expect(noted).toEqual(["2026-07-08", "2026-07-08"]);
    expect(rows[0]).toMatchObject({ customer: "Ingrid Example", hire: reference });
    const { accounts, held } = await must("desk", "GET", "/money");
    expect(held.hires.map(({ hireId }: { hireId: string }) => hireId)).toEqual([id]);
    expect(held.hires[0].deposits.pence).toBe(held.deposits.pence);
    expect(new Set(rows.map(({ account }) => account))).toEqual(
      new Set(accounts.filter((each: string) => rows.some(({ account }) => account === each))),
    );
    expect(accounts.length).toBeGreaterThanOrEqual(new Set(rows.map(({ account }) => account)).size);
  });
});
