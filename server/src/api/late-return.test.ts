import { type SettlementInput, settleHire } from "@setfair/engine";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toJson } from "../desk/documents.ts";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { type Answer, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { liveHire, makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";

// The terms of the demo: 30 minutes of grace, then at most £24 an hour.

describe.each(testedStores())("a hire that came back two and a half hours late, on $kind", ({ kind }) => {
  let depot: TestDepot;
  let id: string;
  let paper: string;
  beforeAll(async () => {
    depot = await makeDepot(kind);
    ({ id } = await liveHire(depot, { lateMinutes: 150 }));
    paper = await sendPhotograph(depot, id, await makeJpeg());
  }, 60_000);
  afterAll(() => depot.close());

  const settlement = async (answer: Promise<Answer>) => {
    const { status, body } = await answer;
    expect(status, JSON.stringify(body)).toBe(200);
    const line = body.result.lines.find((each: { id: string }) => each.id === "late");
    return { line, body };
  };
  const tell = (more: object) =>
    depot.call("desk", "POST", `/hires/${id}/settlement/notes`, {
      kind: "loss",
      what: "overtime",
      pence: 3000,
      reason: "One hand from six to eight, pay sheet of that day",
      photographs: [paper],
      ...more,
    });

  it("costs nothing while no loss was told", async () => {
    const { line } = await settlement(depot.call("desk", "GET", `/hires/${id}/settlement`));
    expect(line).toMatchObject({ amount: { pence: 0 }, because: "noLoss", quantity: { value: 2 } });
  });

  it("refuses a loss without its paper, of no known kind or with no sum, and names the field", async () => {
    for (const [more, field] of [
      [{ photographs: [] }, "photographs"],
      [{ photographs: ["d".repeat(64)] }, "photographs.0"],
      [{ what: "annoyance" }, "what"],
      [{ pence: -1 }, "pence"],
    ] as const) {
      const { status, body } = await tell(more);
      expect([status, body.error.problems[0].path]).toEqual([400, field]);
    }
  });

  it("costs the loss, and of more loss at most the hourly rate; the last entry of a kind holds", async () => {
    expect((await settlement(tell({}))).line.amount.pence).toBe(3000);
    expect((await settlement(tell({ pence: 2500 }))).line.amount.pence).toBe(2500);
    const { line } = await settlement(
      tell({ what: "nextHirer", pence: 9000, reason: "Half a day given back" }),
    );
    expect(line).toMatchObject({ amount: { pence: 4800 }, evidence: { photographs: [paper, paper] } });
    expect((await settlement(tell({ what: "nextHirer", pence: 0 }))).line.amount.pence).toBe(2500);
  });

  it("shows its working on the statement in pounds, and takes no loss once it was shown", async () => {
    const { differences } = (await depot.call("desk", "GET", `/hires/${id}/differences`)).body;
    const classes = differences
      .filter(({ kind: what }: { kind: string }) => what === "mark")
      .map((mark: { id: string }) => ({ id: mark.id, class: "fairWear", reason: "Small." }));
    await depot.call("desk", "PUT", `/hires/${id}/classes`, { classes });
    expect((await depot.call("desk", "POST", `/hires/${id}/settlement`)).status).toBe(200);
    expect((await tell({ pence: 4000 })).status).toBe(409);
    const made = await depot.app.inject({
      method: "GET",
      url: `/api/hires/${id}/papers/statement`,
      headers: { cookie: depot.cookie("desk") },
    });
    const text = (await readPdf(made.rawPayload)).pages.join(" ").replaceAll(/\s+/g, " ");
    for (const said of [
      "Work outside the hours, One hand from six to eight",
      "At most £24 an hour",
      "At most £48 by your terms",
    ])
      expect(text).toContain(said);
    expect(text).not.toMatch(/body\.|[0-9]p an? /);
    const { body } = await depot.call("manager", "GET", `/hires/${id}/money`);
    expect(JSON.stringify(body)).toContain('"late"');
  });
});

it("a settlement that was shown before losses had to be told keeps its hourly charge, also after a word on it", async () => {
  const depot = await makeDepot("sqlite");
  const { id } = await liveHire(depot, { lateMinutes: 150 });
  const { differences } = (await depot.call("desk", "GET", `/hires/${id}/differences`)).body;
  const classes = differences
    .filter(({ kind }: { kind: string }) => kind === "mark")
    .map((mark: { id: string }) => ({ id: mark.id, class: "fairWear", reason: "Small." }));
  await depot.call("desk", "PUT", `/hires/${id}/classes`, { classes });
  await depot.call("desk", "POST", `/hires/${id}/settlement`);
  // as it was frozen then: an input that knows no losses, and two hours at £24
  const { store } = depot;
  const shown = (await store.frozen.ofHire(id)).findLast(({ room }) => room === "settlement");
  if (shown === undefined) throw new Error("the settlement was not frozen");
  const { lateLosses: _, ...input } = shown.document.input as Record<string, unknown>;
  const answer = settleHire({ ...input, lateAtRate: true } as SettlementInput);
  const document = toJson({ ...shown.document, input, answer });
  const frozen = await store.frozen.add({ hireId: id, room: "settlement", document, by: "desk" });
  const part = (await store.hires.parts(id)).settlement;
  const kept = { ...part?.document, answer: toJson(answer), frozenId: frozen.id };
  await store.hires.putPart(id, "settlement", toJson(kept), part?.version ?? 0, "desk");

  const line = async () => {
    const { body } = await depot.call("desk", "GET", `/hires/${id}/settlement`);
    return body.result.lines.find((each: { id: string }) => each.id === "late");
  };
  expect(await line()).toMatchObject({ amount: { pence: 4800 }, because: null });
  const before = (await depot.call("desk", "GET", `/hires/${id}`)).body.settlement;
  const said = { lineId: "late", answer: "reply", text: "The terms say so." };
  await depot.call("desk", "POST", `/hires/${id}/settlement/replies`, said);
  expect(await line()).toMatchObject({ amount: { pence: 4800 }, because: null });
  const after = (await depot.call("desk", "GET", `/hires/${id}`)).body.settlement;
  expect(after.total).toEqual(before.total);
  expect(after.refundDue).toEqual({ currency: "GBP", pence: 0 });
  await depot.close();
});

describe("a hire that came back in time", () => {
  it("takes no loss of a late return", async () => {
    const depot = await makeDepot("sqlite");
    const { id } = await liveHire(depot);
    const { status, body } = await depot.call("desk", "POST", `/hires/${id}/settlement/notes`, {
      kind: "loss",
      what: "lostDay",
      pence: 9000,
      reason: "A day",
      photographs: [await sendPhotograph(depot, id, await makeJpeg())],
    });
    expect([status, body.error.problems[0].path]).toEqual([400, "kind"]);
    await depot.close();
  });
});
