import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { liveHire } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "./samples-for-tests.ts";
import { must, problem, STORES } from "./settlement-for-tests.ts";

// What records bring after a hire: the second look, two readings of one thing, who had the keys, a defect told of.

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
