import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDevice } from "./depot-for-tests.ts";
import { makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";
import {
  type Asked,
  age,
  cost,
  decide,
  must,
  note,
  path,
  problem,
  STORES,
  TORN,
  tornAwning,
} from "./settlement-for-tests.ts";

// The settlement by the desk's own doors: estimate, invoice and refund, second signatures.

describe.each(STORES)("the torn awning of four years in eight, on $kind", ({ kind }) => {
  let asked: Asked;
  beforeAll(async () => {
    asked = await tornAwning(true, kind);
  });
  afterAll(() => asked.depot.close());

  it("is charged £750 by the estimate, and £130 goes back when the invoice is lower", async () => {
    const { depot, id } = asked;
    await decide(asked, { incident: "Wind, Saturday night", todo: "orderPart" });
    await age(asked);
    const estimated = await cost(asked, "estimate", 90_000, 30_000);
    expect(estimated.total.pence).toBe(75_000);
    const line = estimated.result.lines.find((each: { id: string }) => each.id === asked.mark);
    expect(line.incident).toBe("Wind, Saturday night");
    expect(
      line.working.map((figure: { inputs: { labour?: string } }) => figure.inputs.labour ?? null),
    ).toContain("inFull");
    await must(depot.call("desk", "POST", path(asked)));
    const released = await must(depot.call("desk", "POST", `/hires/${id}/deposit-release`));
    expect(released.settlement).toMatchObject({ refundDue: { pence: 0 } });
    expect(released.money).toMatchObject({ depositHeld: { pence: 0 }, owed: { pence: 0 } });

    const invoiced = await cost(asked, "invoice", 64_000, 30_000);
    expect(invoiced).toMatchObject({
      total: { pence: 62_000 },
      lowered: { pence: 13_000 },
      refundDue: { pence: 13_000 },
    });
    expect(await problem(depot.call("desk", "POST", `/hires/${id}/close`))).toEqual([409, "refund"]);
    const money = await must(depot.call("manager", "GET", `/hires/${id}/money`));
    const of = money.refundable.find((each: { fromDeposit: boolean }) => each.fromDeposit).id;
    const refund = {
      id: "refund-130",
      of,
      pence: 13_000,
      on: "2026-07-06",
      reason: "Invoice below the estimate",
    };
    await must(depot.call("manager", "POST", `/hires/${id}/money/refunds`, refund));
    await must(depot.call("manager", "POST", `/hires/${id}/money/refunds`, refund));
    const after = await must(depot.call("desk", "GET", path(asked)));
    expect(after).toMatchObject({ lowered: { pence: 13_000 }, refundDue: { pence: 0 } });
  });

  it("is never made dearer by a later estimate or invoice", async () => {
    await cost(asked, "estimate", 300_000, 90_000);
    expect((await cost(asked, "invoice", 300_000, 90_000)).total.pence).toBe(75_000);
  });

  it("gives the turnaround the job that the desk decided", async () => {
    const { turnarounds } = await must(asked.depot.call("yard", "GET", "/yard/turnarounds"));
    const codes = turnarounds.flatMap(({ jobs }: { jobs: { code: string }[] }) =>
      jobs.map(({ code }) => code),
    );
    expect(codes).toContain("orderPart");
  });

  it("takes what came to light later with evidence of both sides and another person's signature only", async () => {
    const { depot, id } = asked;
    const [bent, stranger] = [await makeJpeg(), await makeJpeg()];
    const photographs = [await sendPhotograph(depot, id, bent)];
    const out = (await must(depot.call("desk", "GET", `/hires/${id}/differences`))).differences.find(
      (each: { id: string }) => each.id === asked.mark,
    ).asItLeft.photographs;
    const claim = {
      kind: "claim",
      about: "Awning arm bent, seen on the lift",
      partsPence: 40_000,
      labourPence: 10_000,
      ageYears: 4,
      lifeYears: 8,
      incident: "Wind, Saturday night",
      reason: "Found when the cloth was changed",
      photographs,
      departure: out,
    };
    expect(await problem(note(asked, { ...claim, photographs: ["f".repeat(64)] }))).toEqual([
      400,
      "photographs.0",
    ]);
    const other = [await sendPhotograph(depot, id, stranger)];
    expect(await problem(note(asked, { ...claim, departure: other }))).toEqual([400, "departure.0"]);
    const before = (await must(depot.call("desk", "GET", path(asked)))).total.pence;
    const found = await must(note(asked, claim));
    const line = found.result.lines.find((each: { code: string }) => each.code === "claim");
    expect(line).toMatchObject({ because: "needsSecondSignature", amount: { pence: 0 } });
    const sign = (as: "desk" | "manager") =>
      depot.call(as, "POST", path(asked, "/second"), { differenceId: line.id, reason: "Seen on the lift" });
    expect(await problem(sign("manager"))).toEqual([400, "differenceId"]);
    const signed = await must(sign("desk"));
    // of one incident: £750 and £300 are more than the excess of £1,000 that caps it
    expect([before, signed.total.pence]).toEqual([75_000, 100_000]);
  });

  it("is no longer known again once it was mended", async () => {
    const { depot, id } = asked;
    const marks = async () =>
      (await must(depot.call("desk", "GET", "/vehicles/pv2"))).marks.map(
        (mark: { part: string }) => mark.part,
      );
    expect(await marks()).toContain("awning.cassette");
    const mended = { kind: "mended", differenceId: asked.mark, on: "2026-07-20", who: "Invented Bodyshop" };
    expect(await problem(note(asked, mended))).toEqual([400, "on"]);
    await must(note(asked, { ...mended, on: "2026-07-06" }));
    expect(await marks()).not.toContain("awning.cassette");
    expect((await must(depot.call("desk", "GET", `/hires/${id}/differences`))).differences).toHaveLength(2);
  });
});

describe("a torn awning of which no photograph was taken when it left", () => {
  it("costs nothing, whoever tore it", async () => {
    const asked = await tornAwning(false);
    await decide(asked);
    await age(asked);
    const { total, result } = await cost(asked, "estimate", 90_000, 30_000);
    expect(total.pence).toBe(0);
    const line = result.lines.find((each: { id: string }) => each.id === asked.mark);
    expect(line.because).toBe("noDeparturePhotograph");
    await asked.depot.close();
  });
});

describe("a mark that one hire was charged for", () => {
  const LATER = { from: "2026-08-03T12:15", to: "2026-08-11T10:00" };

  /** The same vehicle goes out and comes back again; the same mark is touched a little elsewhere. */
  async function again({ depot }: Asked): Promise<Asked> {
    const booking = { customer: CUSTOMER, party: PARTY, ...LATER, vehicleId: "pv2" };
    const { id } = (await must(depot.call("desk", "POST", "/hires", booking))).hire;
    await must(depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true }));
    await must(depot.call("desk", "POST", `/hires/${id}/book`));
    const { version } = (await depot.store.hires.get(id)) ?? { version: 0 };
    await depot.store.hires.update(id, { stage: "onHire" }, version);
    const readiness = (await depot.store.hires.part(id, "readiness")) ?? { version: 0, document: {} };
    const keys = { keysOutAt: "2026-08-03T11:20:00.000Z", keysBackAt: null, checks: {} };
    const gone = { ...readiness.document, ...keys };
    await depot.store.hires.putPart(id, "readiness", gone, readiness.version, "test");
    depot.at("2026-08-11T09:05:00.000Z");
    await must(depot.call("desk", "POST", `/hires/${id}/return`, { at: "2026-08-11T10:00" }));
    const make = makeDevice("tablet-z", `${id}.back`, { hireId: id, vehicleId: "pv2" }, depot.context.now);
    const place = { part: "awning.cassette", view: "offside", xShare: 0.6, yShare: 0.2 };
    const about = { about: TORN, checkId: TORN, direction: "back" };
    const found = make("mark", { ...about, ...place, markKind: "tear", sizeMm: 300, photographs: [] });
    await must(depot.call("yard", "POST", "/records", { records: [found] }));
    return { depot, id, mark: `mark:${found.id}` };
  }
  const becauseOf = async (asked: Asked) => {
    const { result } = await must(asked.depot.call("desk", "GET", path(asked)));
    return result.lines.find((each: { id: string }) => each.id === asked.mark).because;
  };

  it("is never charged to another while nobody has mended it", async () => {
    const first = await tornAwning(true);
    await decide(first);
    await cost(first, "estimate", 0, 20_000);
    await must(first.depot.call("desk", "POST", path(first)));
    const second = await again(first);
    await decide(second);
    expect(await becauseOf(second)).toBe("chargedElsewhere");
    await first.depot.close();
  });

  it("is another mark once it was mended before the keys went out", async () => {
    const first = await tornAwning(true);
    await decide(first);
    await cost(first, "estimate", 0, 20_000);
    await must(first.depot.call("desk", "POST", path(first)));
    await must(
      note(first, { kind: "mended", differenceId: first.mark, on: "2026-07-06", who: "Invented Bodyshop" }),
    );
    const second = await again(first);
    await decide(second);
    expect(await becauseOf(second)).toBe("noDeparturePhotograph");
    await first.depot.close();
  });
});

describe("a charge that was decided after the window", () => {
  it("is nothing until a second person, and not the same one, has signed for it", async () => {
    const asked = await tornAwning(true);
    const { depot } = asked;
    depot.at("2026-07-20T09:00:00.000Z");
    await decide(asked);
    expect((await cost(asked, "estimate", 0, 30_000)).total.pence).toBe(0);
    const sign = (as: "desk" | "manager") =>
      depot.call(as, "POST", path(asked, "/second"), { differenceId: asked.mark, reason: "Same evidence" });
    expect(await problem(sign("desk"))).toEqual([400, "differenceId"]);
    expect((await must(sign("manager"))).total.pence).toBe(30_000);
    await depot.close();
  });
});
