import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "./samples-for-tests.ts";

describe.each(testedStores())("money by the API on $kind", ({ kind }) => {
  let depot: TestDepot;
  let id = "";
  let price = 0;
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer, JSON.stringify(answer.body)).toMatchObject({ status: 200 });
    return answer.body;
  };
  const refused = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer.status, JSON.stringify(answer.body)).toBeGreaterThanOrEqual(400);
    return answer.body.error;
  };
  const pay = (body: object) =>
    depot.call("desk", "POST", `/hires/${id}/payments`, { on: "2026-07-01", method: "transfer", ...body });
  const money = () => must("desk", "GET", `/hires/${id}/money`);

  beforeAll(async () => {
    depot = await makeDepot(kind);
    const body = {
      customer: { ...CUSTOMER, name: '=HYPERLINK("x")' },
      party: PARTY,
      ...PERIOD,
      vehicleId: "pv2",
    };
    id = (await must("desk", "POST", "/hires", body)).hire.id;
    const quoted = await must("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: true });
    price = quoted.quote.total.pence;
    await must("desk", "POST", `/hires/${id}/book`);
  }, 60_000);
  afterAll(() => depot.close());

  it("the booking deposit and the balance are due, and parts that were agreed take their place", async () => {
    const { instalments, owed } = await money();
    expect(owed.pence).toBe(price);
    expect(instalments.map(({ what, dueOn }: { what: string; dueOn: string }) => [what, dueOn])).toEqual([
      ["bookingDeposit", "2026-07-01"],
      ["balance", "2026-07-01"],
    ]);
    const agreed = [
      { dueOn: "2026-07-01", pence: 10_000 },
      { dueOn: "2026-07-02", pence: price - 10_000 },
    ];
    const wrong = await refused("desk", "PUT", `/hires/${id}/money/parts`, { agreed: agreed.slice(0, 1) });
    expect(wrong.problems[0].path).toBe("agreed");
    const parts = await must("desk", "PUT", `/hires/${id}/money/parts`, { agreed });
    expect(parts.instalments).toMatchObject([
      { what: "part", amount: { pence: 10_000 }, overdueDays: 0 },
      { what: "part", dueOn: "2026-07-02" },
    ]);
    expect((await refused("yard", "GET", `/hires/${id}/money`)).code).toBe("notAllowed");
  });

  it("the balance is due by the days of the terms that the hire was quoted under", async () => {
    const asked = { customer: CUSTOMER, party: PARTY, from: "2026-11-20T14:00", to: "2026-11-27T10:00" };
    const hire = (await must("desk", "POST", "/hires", { ...asked, vehicleId: "pv2" })).hire.id;
    await must("desk", "POST", `/hires/${hire}/quote`, { extras: [], accept: true });
    const dueOn = async () => {
      const { instalments } = await must("desk", "GET", `/hires/${hire}/money`);
      return instalments.find(({ what }: { what: string }) => what === "balance").dueOn;
    };
    // 35 days in the invented firm's terms
    expect(await dueOn()).toBe("2026-10-16");
    const { hire: now } = await must("manager", "GET", "/terms");
    const next = { ...now.terms, id: "later", validFrom: "2026-07-01", balanceDaysBefore: 10 };
    await must("manager", "PUT", "/terms", { hire: next });
    expect(await dueOn()).toBe("2026-10-16");
    await must("manager", "PUT", "/terms", { hire: { ...now.terms, id: "again", validFrom: "2026-07-01" } });
  });

  it("sending a payment twice records it once; it cannot be dated ahead, nor be a hold", async () => {
    const body = { id: `p1-${kind}`, kind: "payment", pence: 30_000 };
    expect((await pay(body)).status).toBe(200);
    expect((await pay(body)).body.money.paid.pence).toBe(30_000);
    expect((await pay({ ...body, pence: 1 })).body.error.problems[0].path).toBe("id");
    expect((await pay({ ...body, id: "p2", on: "2026-07-02" })).body.error.problems[0].path).toBe("on");
    expect((await pay({ ...body, id: "p2", method: "cardHold" })).body.error.problems[0].path).toBe("method");
  });

  it("a refund goes by the way it came; two at once cannot both pass", async () => {
    const refund = (n: number, pence: number) =>
      depot.call("desk", "POST", `/hires/${id}/money/refunds`, {
        id: `r${n}-${kind}`,
        of: `p1-${kind}`,
        pence,
        on: "2026-07-01",
        reason: "Changed their mind",
      });
    const both = await Promise.all([refund(1, 20_000), refund(2, 20_000)]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 400]);
    const kept = both.find(({ status }) => status === 400)!.body.error.problems;
    expect(kept).toEqual([
      { path: "pence", expected: "expected at most what is left of that payment, 10000" },
    ]);
    const { refundable, entries } = await money();
    expect(refundable).toMatchObject([{ method: "transfer", left: { pence: 10_000 } }]);
    expect(entries.find((entry: { kind: string }) => entry.kind === "refund").method).toBe("transfer");
    // the old way of recording a refund is held to the same
    const byCash = await pay({ id: "r3", kind: "refund", pence: 100, method: "cash" });
    expect(byCash.body.error.problems[0]).toEqual({
      path: "pence",
      expected: "expected at most what came by this way, 0",
    });
  });

  it("a transfer that failed owes again and stands on the list of what did not arrive", async () => {
    await pay({ id: `p3-${kind}`, kind: "payment", pence: 5000 });
    const undo = {
      id: `f-${kind}`,
      entryId: `p3-${kind}`,
      kind: "failed",
      on: "2026-07-01",
      reason: "Sent back",
    };
    const after = await must("desk", "POST", `/hires/${id}/money/undo`, undo);
    expect(await must("desk", "POST", `/hires/${id}/money/undo`, undo)).toEqual(after);
    expect(after.owed.pence).toBe(price - 10_000);
    const twice = await refused("desk", "POST", `/hires/${id}/money/undo`, { ...undo, id: "f2" });
    expect(twice.problems[0]).toMatchObject({ path: "of", expected: "expected an entry that still stands" });
    const page = await must("desk", "GET", "/money");
    expect(page.failed).toMatchObject([{ hireId: id, amount: { pence: 5000 }, note: "Sent back" }]);
    expect(page.held).toMatchObject({ prepaid: { pence: 10_000 }, deposits: { pence: 0 } });
  });

  it("a hold that is older than its life holds nothing, and is named while it still stands", async () => {
    await pay({ id: `h-${kind}`, kind: "depositHeld", method: "cardHold", pence: 100_000, on: "2026-06-10" });
    const { holds, depositHeld } = await money();
    expect(holds).toMatchObject([{ state: "lapsesBefore", standsTo: "2026-07-08", neededTo: "2026-07-13" }]);
    expect(depositHeld.pence).toBe(100_000);
    const gate = (await must("desk", "GET", `/hires/${id}`)).glass.gates.find(
      (each: { gate: string }) => each.gate === "money",
    );
    const codes = gate.findings.map(({ finding }: { finding: { code: string } }) => finding.code);
    expect(codes).toEqual(["money.owed", "money.holdLapses"]);
    expect((await must("desk", "GET", "/money")).holds).toMatchObject([
      { hireId: id, hold: { daysLeft: 7 } },
    ]);
    depot.at("2026-07-09T08:00:00.000Z");
    expect((await money()).depositHeld.pence).toBe(0);
    const charged = await pay({ id: "c1", kind: "depositCharged", pence: 100, of: `h-${kind}` });
    expect(charged.body.error.problems[0]).toEqual({
      path: "of",
      expected: "expected a hold that has not lapsed",
    });
    const late = (await must("desk", "GET", "/money")).overdue;
    expect(late).toMatchObject([{ hireId: id, what: "part", dueOn: "2026-07-02", days: 7 }]);
    depot.at("2026-07-01T08:00:00.000Z");
  });

  it("invoices what is charged, once, and takes back by a credit note", async () => {
    await must("manager", "PUT", "/money/firm", {
      name: "Invented Hire",
      address: "1 Example Street, Exampleton",
      vatNumber: "GB000000000",
    });
    const first = await must("desk", "POST", `/hires/${id}/invoices`);
    expect(first.invoices).toMatchObject([{ number: "I-00001", kind: "invoice", total: { pence: price } }]);
    expect(first.toInvoice).toBeNull();
    expect((await refused("desk", "POST", `/hires/${id}/invoices`)).code).toBe("missing");
    const fine = {
      id: `fine-${kind}`,
      kind: "charge",
      line: "fine",
      pence: 6000,
      on: "2026-07-01",
      note: "Bus lane",
    };
    const charged = await must("desk", "POST", `/hires/${id}/money/charges`, fine);
    expect(charged.toInvoice).toMatchObject({ kind: "invoice", total: { pence: 6000 }, vat: { pence: 0 } });
    await must("desk", "POST", `/hires/${id}/invoices`);
    const path = `/hires/${id}/invoices/${first.invoices[0].id}`;
    const back = await must("desk", "POST", `${path}/credit`, { reason: "Wrong address" });
    expect(back.invoices.map(({ number }: { number: string }) => number).sort()).toEqual([
      "C-00001",
      "I-00001",
      "I-00002",
    ]);
    expect(back.toInvoice.total.pence).toBe(price);
    expect((await refused("desk", "POST", `${path}/credit`, { reason: "Again" })).problems[0].path).toBe(
      "invoiceId",
    );
    const answer = await depot.app.inject({
      method: "GET",
      url: `/api${path}/paper`,
      headers: { cookie: depot.cookie("desk") },
    });
    const { pages, tagged } = await readPdf(answer.rawPayload);
    expect(tagged).toBe(true);
    for (const text of ["Invoice I-00001", "GB000000000", "VAT by rate", "20 %"])
      expect(pages.join(" ")).toContain(text);
  });

  it("exports every posting once, debits equal to credits, formulas as text, to the manager only", async () => {
    const fetch = (as: "manager" | "desk", to = "2026-07-01") =>
      depot.app.inject({
        method: "GET",
        url: `/api/money/postings?from=2026-06-01&to=${to}`,
        headers: { cookie: depot.cookie(as) },
      });
    expect((await fetch("desk")).statusCode).toBe(403);
    expect((await fetch("manager", "2026-05-01")).statusCode).toBe(400);
    const { body } = await fetch("manager");
    const rows: Record<string, string>[] = parse(body, { columns: true, bom: true });
    const sum = (column: string, account?: string) =>
      rows
        .filter((row) => account === undefined || row.account === account)
        .reduce((total, row) => total + Math.round(Number(row[column]) * 100), 0);
    expect(sum("debit")).toBe(sum("credit"));
    // 300 came by transfer, 200 went back, 50 came and failed
    expect([sum("debit", "bank"), sum("credit", "bank")]).toEqual([35_000, 25_000]);
    // invoiced twice and taken back once: only the fine stands
    expect(sum("debit", "hirers") - sum("credit", "hirers")).toBe(6000 - 10_000);
    expect(new Set(rows.map(({ customer }) => customer))).toEqual(new Set(['\'=HYPERLINK("x")']));
    expect(rows.some(({ document }) => document === "C-00001")).toBe(true);
  });

  it("every change stands in the history of the hire", async () => {
    const { history } = await must("desk", "GET", `/hires/${id}`);
    const acts = new Set(history.map(({ what }: { what: string }) => what));
    for (const act of ["paid", "refunded", "paymentFailed", "invoiced", "credited", "charged", "partsAgreed"])
      expect(acts.has(`hire.${act}`), act).toBe(true);
  });
});
