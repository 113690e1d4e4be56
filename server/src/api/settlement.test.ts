import type { DepotRecord } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toJson } from "../desk/documents.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { type Answer, makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { liveHire, makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "./samples-for-tests.ts";

// The settlement by the desk's own doors: estimate, invoice and refund, second signatures, what is held, what the hirer says.

const TORN = "awning.fullyOut";
/** What money and entries rest on is asked of every store; what the rooms alone decide, of one. */
const STORES = testedStores();
type Kind = (typeof STORES)[number]["kind"];

/** The demo's terms with an awning of £900 that lives 8 years, no price list of repairs, and an excess of £1,000. */
async function putTerms(depot: TestDepot): Promise<void> {
  const [before] = await depot.store.terms.versions("hire");
  const document = structuredClone(before?.document) as {
    security: object;
    tariff: { damage: unknown; kit: unknown; noticeFeePence?: number };
  };
  document.security = { ...document.security, excessPence: 100_000, homePence: 100_000 };
  document.tariff = {
    ...document.tariff,
    damage: [],
    kit: { awning: { newPence: 90_000, lifeYears: 8, leastShare: 0.1 } },
    noticeFeePence: 1500,
  };
  await depot.store.terms.put({ of: "hire", validFrom: "2026-02-01", document: toJson(document) });
}

interface Asked {
  readonly depot: TestDepot;
  readonly id: string;
  readonly mark: string;
}
const path = ({ id }: Asked, rest = "") => `/hires/${id}/settlement${rest}`;
async function must(answer: Promise<Answer>) {
  const { status, body } = await answer;
  expect(status, JSON.stringify(body)).toBe(200);
  return body;
}
const problem = async (answer: Promise<Answer>): Promise<readonly [number, string]> => {
  const { status, body } = await answer;
  return [status, body.error?.problems[0]?.path ?? ""];
};

/** A hire that came back with a torn awning, photographed as it left or not. */
async function tornAwning(withPhotograph: boolean, kind: Kind = "sqlite"): Promise<Asked> {
  const depot = await makeDepot(kind);
  await putTerms(depot);
  const { id } = await liveHire(depot, {
    also: (make, direction, photograph): DepotRecord[] => {
      const about = { about: TORN, checkId: TORN, direction };
      if (direction === "out")
        return withPhotograph ? [make("photograph", { ...about, sha256: photograph })] : [];
      const place = { part: "awning.cassette", view: "offside", xShare: 0.5, yShare: 0.2 };
      return [make("mark", { ...about, ...place, markKind: "tear", sizeMm: 300, photographs: [photograph] })];
    },
  });
  const { differences } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
  const torn = differences.find(({ difference }: { difference: { markKind?: string } }) => {
    return difference.markKind === "tear";
  });
  return { depot, id, mark: torn.id };
}

const decide = (asked: Asked, more: object = {}) =>
  must(
    asked.depot.call("desk", "PUT", `/hires/${asked.id}/classes`, {
      classes: [
        { id: asked.mark, class: "hirer", reason: "Whole when it left, torn when it came.", ...more },
      ],
    }),
  );
const note = (asked: Asked, body: object) => asked.depot.call("manager", "POST", path(asked, "/notes"), body);
const cost = (asked: Asked, kind: string, partsPence: number, labourPence: number) =>
  must(
    asked.depot.call("desk", "POST", path(asked, "/costs"), {
      differenceId: asked.mark,
      kind,
      partsPence,
      labourPence,
      reference: `Workshop ${kind} 1`,
    }),
  );
const age = (asked: Asked) =>
  must(
    note(asked, {
      kind: "age",
      differenceId: asked.mark,
      ageYears: 4,
      reason: "Invoice of the awning, 2022",
    }),
  );

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

describe.each(STORES)("what is disputed, held and answered, on $kind", ({ kind }) => {
  let asked: Asked;
  let token = "";
  beforeAll(async () => {
    asked = await tornAwning(true, kind);
    await decide(asked);
    token = (await must(asked.depot.call("desk", "POST", `/hires/${asked.id}/hirer-link`))).token;
  });
  afterAll(() => asked.depot.close());

  const say = (answer: "accept" | "dispute", text: string) =>
    asked.depot.call(null, "POST", `/guide/${token}/statement`, { lineId: asked.mark, answer, text });
  const reply = (answer: "reply" | "withdraw", text: string, lineId = asked.mark) =>
    asked.depot.call("desk", "POST", path(asked, "/replies"), { lineId, answer, text });

  it("holds a stated sum while the cost is not known, and charges nothing of it", async () => {
    const awaiting = {
      kind: "awaiting",
      differenceId: asked.mark,
      mostPence: 40_000,
      reason: "Estimate asked for",
    };
    expect(await problem(note(asked, { ...awaiting, differenceId: "mark:none" }))).toEqual([
      400,
      "differenceId",
    ]);
    const state = await must(note(asked, awaiting));
    expect(state).toMatchObject({ total: { pence: 0 }, result: { depositWithheld: { pence: 40_000 } } });
    await must(asked.depot.call("desk", "POST", path(asked)));
  });

  it("gives nothing back without a promised day, then all but what is held, and reminds of the day", async () => {
    const { depot, id } = asked;
    const release = () => depot.call("desk", "POST", `/hires/${id}/deposit-release`);
    expect(await problem(release())).toEqual([409, "promisedOn"]);
    const hold = (promisedOn: string) =>
      depot.call("desk", "POST", path(asked, "/hold"), { promisedOn, reason: "Workshop has not answered" });
    expect(await problem(hold("2026-07-05"))).toEqual([400, "promisedOn"]);
    expect((await must(hold("2026-07-10"))).promisedOn).toBe("2026-07-10");
    const page = await must(release());
    expect(page.money.depositHeld.pence).toBe(40_000);
    expect(page.waits).toMatchObject([{ code: "answerHeld", facts: { promisedOn: "2026-07-10" } }]);
    expect((await must(depot.call("desk", "GET", `/hires/${id}/notes`))).notes).toMatchObject([
      { kind: "promise", on: "2026-07-10", text: expect.stringContaining("Workshop has not answered") },
    ]);
    expect(await problem(depot.call("desk", "POST", `/hires/${id}/close`))).toEqual([409, "deposit"]);
    depot.at("2026-07-11T08:00:00.000Z");
    expect((await must(depot.call("desk", "GET", `/hires/${id}`))).waits[0].code).toBe("answerLate");
  });

  it("keeps every word of hirer and desk on a line, and the charge once it is taken back stays at nothing", async () => {
    const { depot, id } = asked;
    const invoiced = await cost(asked, "invoice", 0, 25_000);
    expect(invoiced.total.pence).toBe(25_000);
    expect((await must(say("dispute", "The wind tore it while we slept."))).result.disputed.pence).toBe(
      25_000,
    );
    await must(reply("reply", "The handover says: in at night. Signed by you."));
    expect(await problem(reply("reply", "…", "no such line"))).toEqual([400, "lineId"]);
    const withdrawn = await must(reply("withdraw", "As goodwill."));
    expect(withdrawn).toMatchObject({ total: { pence: 0 }, toGiveBack: { pence: 40_000 } });
    const kinds = withdrawn.entries.map(({ kind, by }: { kind: string; by: string | null }) => [kind, by]);
    expect(kinds.slice(-3)).toEqual([
      ["dispute", null],
      ["reply", "Dee Desk"],
      ["withdraw", "Dee Desk"],
    ]);
    const page = await must(depot.call("desk", "POST", `/hires/${id}/deposit-release`));
    expect(page.money).toMatchObject({ depositHeld: { pence: 0 }, owed: { pence: 0 } });
    expect(await depot.call("desk", "POST", `/hires/${id}/deposit-release`)).toMatchObject({ status: 409 });
  });

  it("writes lost property down with what became of it", async () => {
    const { depot, id } = asked;
    const lost = { what: "Child's rucksack", where: "Overcab bed", now: "kept", costPence: 0, note: "" };
    const send = (body: object) => depot.call("desk", "POST", `/hires/${id}/lost-property`, body);
    expect(await problem(send({ ...lost, costPence: -1 }))).toEqual([400, "costPence"]);
    await must(send(lost));
    const { entries } = await must(send({ ...lost, now: "posted", costPence: 495 }));
    const kept = entries.filter(({ kind }: { kind: string }) => kind === "lost");
    expect(kept.map(({ document }: { document: { now: string } }) => document.now)).toEqual([
      "kept",
      "posted",
    ]);
  });

  it("passes a fine on only for a time with this hirer, at most at the stated fee, and once", async () => {
    const { depot, id } = asked;
    const copy = [await sendPhotograph(depot, id, await makeJpeg())];
    const fine = {
      kind: "notice",
      id: "notice-1",
      what: "fine",
      issuer: "Invented Council",
      reference: "PCN 1",
      at: "2026-07-04T15:00",
      where: "Harbour car park, invented",
      pence: 3500,
      feePence: 1500,
      photographs: copy,
    };
    expect(await problem(note(asked, { ...fine, at: "2026-07-06T11:00" }))).toEqual([400, "at"]);
    expect(await problem(note(asked, { ...fine, feePence: 1501 }))).toEqual([400, "feePence"]);
    expect(await problem(note(asked, { ...fine, photographs: [] }))).toEqual([400, "photographs"]);
    await must(note(asked, fine));
    await must(note(asked, fine));
    // the hirer sees it with its notice, and no other photograph of the depot's
    const statement = await must(depot.call(null, "GET", `/guide/${token}/statement`));
    const shown = statement.entries.find(({ kind }: { kind: string }) => kind === "notice");
    expect(shown.document).toMatchObject({ reference: "PCN 1", pence: 3500 });
    const seen = (sha256: string | undefined) =>
      depot.app.inject({ method: "GET", url: `/api/guide/${token}/photos/${sha256}?size=small` });
    expect((await seen(copy[0])).statusCode).toBe(200);
    const other = await sendPhotograph(depot, id, await makeJpeg());
    expect((await seen(other)).statusCode).toBe(404);
    const lineId = `notice:${shown.id}`;
    const told = (answer: string, text: string, about = lineId) =>
      depot.call(null, "POST", `/guide/${token}/statement`, { lineId: about, answer, text });
    expect(await problem(told("dispute", "", lineId))).toEqual([400, "text"]);
    expect(await problem(told("dispute", "Not me.", "notice:none"))).toEqual([400, "lineId"]);
    await must(told("dispute", "I had paid at the machine."));
    expect(await problem(reply("withdraw", "As goodwill.", lineId))).toEqual([400, "answer"]);
    const answered = await must(reply("reply", "Send us the ticket, and we pass it on.", lineId));
    expect(answered.entries.slice(-2)).toMatchObject([
      { kind: "dispute", about: lineId, by: null, document: { text: "I had paid at the machine." } },
      { kind: "reply", about: lineId, by: "Dee Desk" },
    ]);
    expect((await must(told("accept", ""))).entries.at(-1)).toMatchObject({ kind: "accept", about: lineId });
    const charges = (await depot.store.payments.ofHire(id)).filter(({ kind }) => kind === "charge");
    expect(charges.map(({ document, pence }) => [document.line, pence])).toEqual([
      ["fine", 3500],
      ["administration", 1500],
    ]);
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

describe("the second look after the wash", () => {
  const WET = "cab.rear";
  let depot: TestDepot;
  let id = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    ({ id } = await liveHire(depot, {
      without: [WET],
      also: (make, direction) =>
        direction === "out"
          ? []
          : [make("look", { about: WET, checkId: WET, saw: "tooWetOrDirty", direction })],
    }));
  });
  afterAll(() => depot.close());

  it("holds settlement and deposit, and the tablet has it as a round of its own", async () => {
    const { secondLook } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
    expect(secondLook).toMatchObject({ due: [WET], holds: true, until: "2026-07-08T09:05:00.000Z" });
    expect(await problem(depot.call("desk", "POST", `/hires/${id}/settlement`))).toEqual([409, "secondLook"]);
    expect((await must(depot.call("desk", "GET", `/hires/${id}`))).waits[0].code).toBe("secondLook");
    const { jobs } = await must(depot.call("yard", "GET", "/yard/jobs?date=2026-07-06"));
    const job = jobs.find((each: { id: string }) => each.id === `${id}~look.back`);
    const checks = job.walkRound.steps.flatMap((step: { checks: { id: string }[] }) => step.checks);
    expect(checks.map((check: { id: string }) => check.id)).toEqual([WET]);
    expect(job).toMatchObject({ secondLook: { until: secondLook.until }, done: false });
  });

  it("is done when the place was looked at, and what it showed is charged only within the window", async () => {
    const look = makeDevice(
      "tablet-2",
      `${id}~look.back`,
      { hireId: id, vehicleId: "pv2" },
      depot.context.now,
    );
    const seen = (at: string) => {
      depot.at(at);
      return look("mark", {
        about: WET,
        checkId: WET,
        direction: "back",
        part: "cab.body",
        view: "rear",
        xShare: 0.3,
        yShare: at.includes("07-07") ? 0.2 : 0.8,
        markKind: "dent",
        sizeMm: 40,
        photographs: ["c".repeat(64)],
      });
    };
    const within = seen("2026-07-07T09:00:00.000Z");
    const late = seen("2026-07-09T09:00:00.000Z");
    const same = look("look", { about: WET, checkId: WET, saw: "mark", direction: "back" });
    await must(depot.call("yard", "POST", "/records", { records: [within, late, same] }));
    const { differences, secondLook } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
    expect(secondLook).toMatchObject({ due: [], holds: false });
    const classes = differences.map((each: { id: string }) => ({
      id: each.id,
      class: "hirer",
      reason: "new",
    }));
    await must(depot.call("desk", "PUT", `/hires/${id}/classes`, { classes }));
    const { result } = await must(depot.call("desk", "GET", `/hires/${id}/settlement`));
    const because = new Map(
      result.lines.map((line: { id: string; because: string }) => [line.id, line.because]),
    );
    expect(because.get(`mark:${late.id}`)).toBe("afterWindow");
    expect(because.get(`mark:${within.id}`)).not.toBe("afterWindow");
    await must(depot.call("desk", "POST", `/hires/${id}/settlement`));
  });
});

describe("a tablet that was late and says that something was too wet", () => {
  it("still holds the deposit after the settlement, until the window is over", async () => {
    const depot = await makeDepot("sqlite");
    const { id } = await liveHire(depot, { without: ["cab.roof"] });
    await must(depot.call("desk", "POST", `/hires/${id}/settlement`));
    const refs = { hireId: id, vehicleId: "pv2" };
    const late = makeDevice("tablet-late", `${id}.late.back`, refs, depot.context.now);
    const wet = late("look", {
      about: "cab.roof",
      checkId: "cab.roof",
      saw: "tooWetOrDirty",
      direction: "back",
    });
    await must(depot.call("yard", "POST", "/records", { records: [wet] }));
    const release = () => depot.call("desk", "POST", `/hires/${id}/deposit-release`);
    expect(await problem(release())).toEqual([409, "secondLook"]);
    depot.at("2026-07-08T09:05:01.000Z");
    expect((await must(release())).money.depositHeld.pence).toBe(0);
    await depot.close();
  });
});

describe("two tablets that read one thing differently", () => {
  it("ask whoever signs, and what was answered holds", async () => {
    const depot = await makeDepot("sqlite");
    const { id } = await liveHire(depot);
    const ask = async () => (await must(depot.call("desk", "GET", `/hires/${id}/questions`))).questions;
    expect(await ask()).toEqual([]);
    const about = { about: "cab.odometer", checkId: "cab.odometer", direction: "back", unit: "km" };
    const refs = { hireId: id, vehicleId: "pv2" };
    const other = makeDevice("tablet-other", `${id}.back`, refs, depot.context.now);
    await must(
      depot.call("yard", "POST", "/records", { records: [other("reading", { ...about, value: 400 })] }),
    );
    const [question] = await ask();
    expect(question).toMatchObject({ checkId: "cab.odometer", when: "back" });
    expect(question.entries.map(({ value }: { value: number }) => value)).toEqual([12, 400]);
    const answer = makeDevice(
      "desk",
      "desk.q",
      refs,
      depot.context.now,
    )("answer", {
      about: question.entries[0].about,
      among: question.entries.map(({ id: of, hash }: { id: string; hash: string }) => ({ id: of, hash })),
      holds: question.entries[1].id,
    });
    await must(depot.call("desk", "POST", "/records", { records: [answer] }));
    expect(await ask()).toEqual([]);
    const { differences } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
    const driven = differences.find((each: { id: string }) => each.id === "reading:cab.odometer");
    expect(driven.difference.back.value).toBe(400);
    await depot.close();
  });
});

describe("two tablets that read one thing differently before the keys", () => {
  it("hold the keys until whoever signs has said which entry holds", async () => {
    const depot = await makeDepot("sqlite");
    const asked = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    const { id } = (await must(depot.call("desk", "POST", "/hires", asked))).hire;
    await must(depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true }));
    await must(depot.call("desk", "POST", `/hires/${id}/book`));
    depot.at("2026-07-03T10:00:00.000Z");
    const about = { about: "cab.odometer", checkId: "cab.odometer", direction: "out", unit: "km" };
    const refs = { hireId: id, vehicleId: "pv2" };
    const read = (device: string, value: number) =>
      makeDevice(device, `${id}.out`, refs, depot.context.now)("reading", { ...about, value });
    const records = [read("tablet-1", 42_000), read("tablet-2", 42_100)];
    await must(depot.call("yard", "POST", "/records", { records }));
    const findings = async (): Promise<string[]> =>
      (await must(depot.call("desk", "GET", `/hires/${id}`))).glass.gates.flatMap(
        (gate: { findings: { finding: { code: string } }[] }) =>
          gate.findings.map(({ finding }) => finding.code),
      );
    expect(await findings()).toContain("signatures.twoReadings");
    const [question] = (await must(depot.call("desk", "GET", `/hires/${id}/questions`))).questions;
    const among = question.entries.map(({ id: of, hash }: { id: string; hash: string }) => ({
      id: of,
      hash,
    }));
    const answer = makeDevice(
      "desk",
      "desk.q",
      refs,
      depot.context.now,
    )("answer", {
      about: "cab.odometer",
      among,
      holds: among[0].id,
    });
    await must(depot.call("desk", "POST", "/records", { records: [answer] }));
    expect(await findings()).not.toContain("signatures.twoReadings");
    await depot.close();
  });
});

describe.each(STORES)("custody of the keys, on $kind", ({ kind }) => {
  it("is one line from hire to hire, with what was written down between them", async () => {
    const depot = await makeDepot(kind);
    const { id } = await liveHire(depot);
    depot.at("2026-07-06T13:00:00.000Z");
    const make = makeDevice("desk", "desk.keys", { vehicleId: "pv2" }, depot.context.now);
    const keys = make("keys", {
      direction: "out",
      holder: "workshop",
      who: "Invented Bodyshop",
      seen: "Scratch on the nearside, as recorded",
      at: "2026-07-06T12:30:00.000Z",
    });
    await must(depot.call("desk", "POST", "/records", { records: [keys] }));
    const { lines } = await must(depot.call("desk", "GET", "/vehicles/pv2/custody"));
    expect(
      lines.map(({ holder, hireId, until }: Record<string, unknown>) => [holder, hireId, until]),
    ).toEqual([
      ["workshop", null, null],
      ["depot", id, "2026-07-06T12:30:00.000Z"],
      ["hirer", id, "2026-07-06T09:00:00.000Z"],
    ]);
    // the walk-round back was made while the depot had the keys
    expect(lines[1].marks).toBe(1);
    expect(await depot.call("desk", "GET", "/vehicles/none/custody")).toMatchObject({ status: 404 });
    await depot.close();
  });
});

describe("a defect of comfort", () => {
  it("that the hirer was told of and signed for is told once, and says who closed it", async () => {
    const depot = await makeDepot("sqlite");
    const { id } = await liveHire(depot);
    const noted = await must(
      depot.call("yard", "POST", "/vehicles/pv2/defects", {
        class: "comfort",
        what: "Fly screen sticks",
        where: "Door",
      }),
    );
    const [defect] = noted.defects;
    const make = makeDevice("desk", "desk.told", { hireId: id, vehicleId: "pv2" }, depot.context.now);
    const said = make("note", { about: `defect.${defect.id}`, text: "Fly screen sticks", told: true });
    const signed = make("signature", {
      purpose: "defects",
      records: [{ id: said.id, hash: said.hash }],
      signer: { name: "Ingrid Example" },
      role: "hirer",
      shown: { text: "Told of it", language: "en-GB" },
      strokes: [[{ x: 1, y: 1 }]],
    });
    for (const records of [
      [said, signed],
      [said, signed],
    ])
      await must(depot.call("desk", "POST", "/records", { records }));
    expect(await depot.store.defects.disclosures([id])).toMatchObject([
      { defectId: defect.id, signer: "Ingrid Example" },
    ]);
    const closed = await must(depot.call("yard", "POST", `/defects/${defect.id}/close`, { how: "Greased" }));
    expect(closed.defects[0]).toMatchObject({
      closed: { how: "Greased", by: "Yo Yard" },
      told: [{ hireId: id, signer: "Ingrid Example" }],
    });
    await depot.close();
  });
});
