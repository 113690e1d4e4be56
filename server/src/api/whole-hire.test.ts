import { readFileSync } from "node:fs";
import type { WalkRound } from "@setfair/engine";
import { type DepotRecord, verifyRecords } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { testedStores } from "../store/stores-for-tests.ts";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, PERIOD, TRIP } from "./samples-for-tests.ts";

const stroke = {
  strokes: [
    [
      { x: 1, y: 1 },
      { x: 2, y: 2 },
    ],
  ],
  shown: { text: "as shown", language: "en-GB" },
};

function signature(purpose: string, records: readonly DepotRecord[]) {
  return {
    purpose,
    records: records.map(({ id, hash }) => ({ id, hash })),
    signer: { name: "Ingrid Example" },
    role: "hirer",
    ...stroke,
  };
}

/** A walk-round as the yard records it: every check, each reading at its middle unless said otherwise. */
function walk(
  depot: TestDepot,
  hireId: string,
  direction: "out" | "back",
  round: WalkRound,
  values: Record<string, number>,
): DepotRecord[] {
  const make = makeDevice(
    `tablet-${direction}`,
    `${hireId}.${direction}`,
    { hireId, vehicleId: "pv2" },
    depot.context.now,
  );
  const records = [make("walkStarted", { direction })];
  for (const check of round.steps.flatMap(({ checks }) => checks)) {
    const about = { about: check.id, checkId: check.id, direction };
    if (check.kind === "reading" && check.reading) {
      const value = values[check.id] ?? Math.min(check.reading.max, Math.max(check.reading.min, 12));
      records.push(make("reading", { ...about, value, unit: check.reading.unit }));
    } else if (check.kind === "count") {
      records.push(make("count", { ...about, found: check.expected ?? 1, expected: check.expected ?? 1 }));
    } else records.push(make("look", { ...about, saw: "same" }));
  }
  // the side as it left: without it nothing is charged for a mark there
  if (direction === "out")
    records.push(
      make("photograph", { about: "view.nearside", view: "nearside", direction, sha256: "a".repeat(64) }),
    );
  const mark = (part: string, x: number) =>
    make("mark", {
      about: part,
      direction,
      part,
      view: "nearside",
      xShare: x,
      yShare: 0.4,
      markKind: "scratch",
      sizeMm: 60,
      photographs: [],
    });
  records.push(mark("body.nearside", 0.2), mark("body.nearside", 0.5));
  if (direction === "back") records.push(mark("body.nearside", 0.85));
  if (direction === "out") {
    const seen = [...records];
    const briefed = make("briefed", { about: "leisureBattery.panel", direction });
    records.push(
      briefed,
      make("signature", signature("agreement", seen)),
      make("signature", signature("briefing", [briefed])),
    );
    records.push(make("signature", signature("condition", seen)));
  } else records.push(make("signature", signature("condition", [...records])));
  records.push(make("walkFinished", { direction }));
  return records;
}

describe.each(testedStores())("a hire lived through on $kind", ({ kind }) => {
  let depot: TestDepot;
  let id = "";
  const page = async () => (await depot.call("desk", "GET", `/hires/${id}`)).body;
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer, JSON.stringify(answer.body)).toMatchObject({ status: 200 });
    return answer.body;
  };
  beforeAll(async () => {
    depot = await makeDepot(kind);
  });
  afterAll(() => depot.close());

  it("goes from the enquiry to the quote and books, and the vehicle is then taken", async () => {
    const able = await must("desk", "POST", "/availability", { party: PARTY, ...PERIOD });
    expect(able.vehicles.filter(({ possible }: { possible: boolean }) => possible)).toHaveLength(2);
    const made = await must("desk", "POST", "/hires", {
      customer: CUSTOMER,
      party: PARTY,
      ...PERIOD,
      vehicleId: "pv2",
    });
    id = made.hire.id;
    expect(made.hire.stage).toBe("enquiry");
    const quoted = await must("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: true });
    expect(quoted.quote.acceptedAt).not.toBeNull();
    expect((await must("desk", "POST", `/hires/${id}/book`)).hire.stage).toBe("booked");
    const other = await must("desk", "POST", "/hires", {
      customer: CUSTOMER,
      party: PARTY,
      ...PERIOD,
      vehicleId: "pv2",
    });
    await must("desk", "POST", `/hires/${other.hire.id}/quote`, { accept: true });
    const taken = await depot.call("desk", "POST", `/hires/${other.hire.id}/book`);
    expect(taken).toMatchObject({ status: 409, body: { error: { code: "taken" } } });
    const after = await must("desk", "POST", "/availability", { party: PARTY, ...PERIOD });
    expect(after.vehicles.find((each: { id: string }) => each.id === "pv2").possible).toBe(false);
  });

  it("holds the keys until every gate that is due is clear, and says which are not", async () => {
    const refused = await depot.call("desk", "POST", `/hires/${id}/keys`);
    expect(refused.status).toBe(409);
    expect(refused.body.error.problems.map(({ path }: { path: string }) => path)).toContain("glass.licence");
    await must("desk", "PUT", `/hires/${id}/drivers`, { drivers: [DRIVER] });
    await must("desk", "PUT", `/hires/${id}/trip`, TRIP);
    await must("desk", "PUT", `/hires/${id}/load`, LOAD);
    const forecast = await must("desk", "GET", `/hires/${id}/forecast`);
    expect(forecast).toMatchObject({ runs: 500, cached: true });
    expect((await must("desk", "GET", `/hires/${id}/load`)).result.legal).toBe(true);
    const { quote, money } = await page();
    for (const [kindOf, pence] of [
      ["payment", quote.total.pence],
      ["depositHeld", money.depositDue.pence],
    ] as const) {
      await must("desk", "POST", `/hires/${id}/payments`, {
        id: `pay-${kindOf}-${kind}`,
        kind: kindOf,
        pence,
        on: "2026-07-01",
        method: "card",
      });
    }
    const open = (await page()).glass.gates.filter(
      ({ state }: { state: string }) => state === "refused" || state === "referred",
    );
    expect(open).toEqual([]);
    const still = await depot.call("desk", "POST", `/hires/${id}/keys`);
    expect(still.body.error.problems).toEqual([{ path: "glass.signatures", expected: "notCheckedYet" }]);
  });

  it("takes the walk-round out once, however often it is sent, and hands the keys over", async () => {
    depot.at("2026-07-03T10:30:00.000Z");
    const { jobs } = await must("yard", "GET", "/yard/jobs?date=2026-07-03");
    const job = jobs.find(({ hireId }: { hireId: string }) => hireId === id);
    expect(job).toMatchObject({
      id: `${id}.out`,
      walk: "out",
      signaturesNeeded: ["agreement", "briefing", "condition"],
    });
    const records = walk(depot, id, "out", job.walkRound, {});
    const first = await must("yard", "POST", "/records", { records });
    expect(first.added).toBe(records.length);
    expect(await must("yard", "POST", "/records", { records })).toMatchObject({ added: 0, head: first.head });
    const ready = await page();
    expect(ready.signaturesNeeded).toEqual([]);
    expect(["goesWithConditions", "readyWithNotes", "ready"]).toContain(ready.glass.state);
    depot.at("2026-07-03T11:20:00.000Z");
    const gone = await must("desk", "POST", `/hires/${id}/keys`);
    expect(gone).toMatchObject({ hire: { stage: "onHire", glass: null }, glass: null });
    expect((await depot.store.frozen.ofHire(id)).map(({ room }) => room).sort()).toEqual([
      "briefing",
      "forecast",
      "glass",
      "load",
      "quote",
      "vehicle",
    ]);
  });

  it("gives the hirer's phone its own hire only, and takes one reading of the panel", async () => {
    const { token } = await must("desk", "POST", `/hires/${id}/hirer-link`);
    const guide = await must(null, "GET", `/guide/${token}`);
    expect(guide).toMatchObject({ hireId: id, depot: { telephone: "01632 960000" } });
    expect(guide.forecast.result.stores.length).toBeGreaterThan(3);
    expect(guide.faults.symptoms.length).toBeGreaterThan(12);
    depot.at("2026-07-04T08:00:00.000Z");
    const make = makeDevice("phone", `${id}.road`, { hireId: id }, depot.context.now);
    const reading = make("reading", {
      about: "battery12",
      value: 12.4,
      unit: "V",
      at: "2026-07-04T08:00:00.000Z",
    });
    await must(null, "POST", `/guide/${token}/records`, { records: [reading] });
    const again = await must("desk", "GET", `/hires/${id}/forecast`);
    expect(again.result.readings).toHaveLength(1);
    const stranger = makeDevice(
      "phone",
      `${id}.road`,
      { hireId: "another" },
      depot.context.now,
    )("reading", { about: "lpg", value: 3, unit: "kg" });
    expect(await depot.call(null, "POST", `/guide/${token}/records`, { records: [stranger] })).toMatchObject({
      status: 400,
    });
    const note = makeDevice(
      "phone",
      `${id}.road`,
      { hireId: id },
      depot.context.now,
    )("note", { text: "hello" });
    expect(await depot.call(null, "POST", `/guide/${token}/records`, { records: [note] })).toMatchObject({
      status: 400,
    });
  });

  it("shows the desk what the hirer tried when the gas would not light, until somebody has answered", async () => {
    const symptom = "lpg.nothingLights";
    const tell = (device: string, chain: string, by: string, outcome: string) =>
      makeDevice(
        device,
        chain,
        { hireId: id },
        depot.context.now,
      )("help", {
        about: symptom,
        by,
        outcome,
        answers: [{ check: "lpg.openValve", answer: outcome === "fixed" ? "fixed" : "notIt" }],
        causes: outcome === "fixed" ? ["lpg.valveShut"] : ["lpg.empty", "lpg.regulator"],
      });
    const { token } = await must("desk", "POST", `/hires/${id}/hirer-link`, {});
    const before = await must("desk", "GET", `/hires/${id}`);
    const asked = tell("other phone", `${id}.road`, "hirer", "call");
    await must(null, "POST", `/guide/${token}/records`, { records: [asked] });
    const help = await must("desk", "GET", `/hires/${id}/help`);
    expect(help.entries).toMatchObject([{ symptom, outcome: "call", by: "hirer" }]);
    expect(help.stores.length).toBeGreaterThan(3);
    const page = await must("desk", "GET", `/hires/${id}`);
    expect(page.hire.toActOn).toBe(before.hire.toActOn + 1);
    // what is counted is listed
    expect(page.onTheRoad).toHaveLength(page.hire.toActOn);
    expect(page.onTheRoad[0]).toMatchObject({ code: "diagnosis.helpAsked" });
    expect(page.waits[0]).toMatchObject({ code: "helpAsked", whose: "desk" });
    await must("desk", "POST", "/records", { records: [tell("desk", "desk.1", "desk", "fixed")] });
    const after = await must("desk", "GET", `/hires/${id}`);
    expect(after.hire.toActOn).toBe(before.hire.toActOn);
    expect((await must("desk", "GET", `/hires/${id}/help`)).faults.history).toEqual([
      { symptom, cause: "lpg.valveShut", count: 1 },
    ]);
  });

  it("finds the one new mark, settles to the penny on the desk's decision and closes", async () => {
    depot.at("2026-07-06T09:05:00.000Z");
    expect((await must("desk", "POST", `/hires/${id}/return`, { at: "2026-07-06T10:00" })).hire.stage).toBe(
      "returned",
    );
    const { jobs } = await must("yard", "GET", "/yard/jobs?date=2026-07-06");
    const job = jobs.find((each: { hireId: string }) => each.hireId === id);
    expect(job.walk).toBe("back");
    await must("yard", "POST", "/records", { records: walk(depot, id, "back", job.walkRound, {}) });
    const { differences } = await must("desk", "GET", `/hires/${id}/differences`);
    expect(differences.map((each: { kind: string }) => each.kind)).toEqual(["mark"]);
    expect((await must("desk", "GET", `/hires/${id}/settlement`)).total.pence).toBe(0);
    const mark = differences[0].id;
    await must("desk", "PUT", `/hires/${id}/classes`, {
      classes: [{ id: mark, class: "hirer", reason: "fresh, not on the way out, hirer agrees" }],
    });
    const open = await must("desk", "GET", `/hires/${id}/settlement`);
    expect(open.total.pence).toBeGreaterThan(0);
    const settled = await must("desk", "POST", `/hires/${id}/settlement`);
    expect(settled).toMatchObject({ hire: { stage: "settled" }, settlement: { total: open.total } });
    const { lines, total, overExcess } = settled.settlement.result;
    expect(
      lines.reduce(
        (sum: number, line: { amount: { pence: number } }) => sum + line.amount.pence,
        overExcess.pence,
      ),
    ).toBe(total.pence);
    // the hirer disputes the mark on the phone: only that is held, and not without a promised day
    const { token } = await must("desk", "POST", `/hires/${id}/hirer-link`);
    const answer = (said: string, text = "") =>
      depot.call(null, "POST", `/guide/${token}/statement`, { lineId: mark, answer: said, text });
    expect((await answer("dispute")).body.error.problems[0].path).toBe("text");
    const disputed = (await answer("dispute", "It was there before.")).body;
    expect(disputed.result.depositWithheld).toEqual(disputed.result.disputed);
    expect(disputed.result.disputed.pence).toBeGreaterThan(0);
    const refused = await depot.call("desk", "POST", `/hires/${id}/deposit-release`);
    expect(refused.body.error.problems[0].path).toBe("promisedOn");
    // an invoice below what was charged gives the difference back; withdrawn, nothing is charged
    const cost = { differenceId: mark, kind: "invoice", partsPence: 0, labourPence: 100, reference: "W 1" };
    const paid = await must("desk", "POST", `/hires/${id}/settlement/costs`, cost);
    expect(paid.lowered.pence).toBe(total.pence - paid.total.pence);
    // nothing was kept of the deposit yet, so nothing is to be paid back; what is disputed is not kept
    expect(paid).toMatchObject({ refundDue: { pence: 0 }, toKeep: { pence: 0 } });
    expect(paid.total.pence).toBeLessThan(total.pence);
    const accepted = (await answer("accept")).body;
    expect(accepted.entries.map(({ kind }: { kind: string }) => kind)).toEqual([
      "dispute",
      "invoice",
      "accept",
    ]);
    expect(await depot.call("desk", "POST", `/hires/${id}/close`)).toMatchObject({ status: 409 });
    const released = await must("desk", "POST", `/hires/${id}/deposit-release`);
    expect(released.money.depositHeld.pence).toBe(0);
    const closed = await must("desk", "POST", `/hires/${id}/close`);
    expect(closed.hire.stage).toBe("closed");
    expect(closed.history.map(({ what }: { what: string }) => what)).toEqual(
      expect.arrayContaining([
        "hire.enquired",
        "hire.quoteAccepted",
        "hire.booked",
        "hire.keysOut",
        "hire.returned",
        "hire.settled",
        "hire.closed",
      ]),
    );
  });

  it("exports records that verify, without what other hires said", async () => {
    const all = await must("desk", "GET", `/hires/${id}/records`);
    const head = (await page()).records.head;
    expect(verifyRecords(all)).toMatchObject({ ok: true, head });
  });
});

it("has terms and a vehicle to try with", () => {
  expect(readFileSync(new URL("../../../demo/src/terms.json", import.meta.url), "utf8")).toContain(
    "panelVan",
  );
});
