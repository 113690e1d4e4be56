import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { USUAL_FIGURES } from "../desk/depot-figures.ts";
import { plannedMessages } from "../mail/plan-messages.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { bookHire, liveHire } from "./lived-hire-for-tests.ts";
import { CUSTOMER, PARTY, PERIOD } from "./samples-for-tests.ts";
import { must, problem } from "./settlement-for-tests.ts";

let depot: TestDepot;
const read = () => must(depot.call("desk", "GET", "/depot/figures"));
const put = (body: object, basedOn?: string, as: "manager" | "desk" = "manager") =>
  depot.call(as, "PUT", `/depot/figures${basedOn === undefined ? "" : `?basedOn=${basedOn}`}`, body);
/** the figures as they are with some changed */
async function change(part: object): Promise<void> {
  const { figures, version } = await read();
  await must(put({ ...figures, ...part }, version));
}

describe("days of messages, life of a link and km a day", () => {
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("are the usual ones until a manager enters others; each out of its range is named", async () => {
    const { figures, usual, version } = await read();
    expect([figures, usual]).toEqual([USUAL_FIGURES, USUAL_FIGURES]);
    expect((await put(figures, version, "desk")).status).toBe(403);
    const { messageDays } = figures;
    for (const [part, path] of [
      [{ linkDays: 61 }, "linkDays"],
      [{ kmADay: 0 }, "kmADay"],
      [{ messageDays: { ...messageDays, preHire: 61 } }, "messageDays.preHire"],
      [{ messageDays: { ...messageDays, statement: -1 } }, "messageDays.statement"],
      // the short message would come before the pack
      [{ messageDays: { ...messageDays, dayBefore: 7 } }, "messageDays.dayBefore"],
    ] as const)
      expect(await problem(put({ ...figures, ...part }, version))).toEqual([400, path]);
    expect((await read()).figures).toEqual(USUAL_FIGURES);
  });

  it("whoever began from other ones does not write over them, and the depot's other settings leave them", async () => {
    const { figures, version } = await read();
    await must(put({ ...figures, linkDays: 20 }, version));
    const { status, body } = await put({ ...figures, linkDays: 30 }, version);
    expect([status, body.error.problems[1]]).toEqual([
      409,
      { path: "linkDays", expected: "Kept by now: 20" },
    ]);
    const { timeZone: _, country: __, ...settings } = await must(depot.call("manager", "GET", "/depot"));
    await must(depot.call("manager", "PUT", "/depot", { ...settings, turnaroundMinutes: 200 }));
    expect((await read()).figures.linkDays).toBe(20);
  });

  it("decide until when a link serves that is made from now on", async () => {
    const id = await bookHire(depot);
    const link = async () => (await must(depot.call("desk", "POST", `/hires/${id}/hirer-link`))).expires;
    expect(await link()).toBe("2026-07-26T09:00:00.000Z");
    await change({ linkDays: 60 });
    expect(await link()).toBe("2026-09-04T09:00:00.000Z");
  });

  it("decide whether a service falls due by distance within a hire", async () => {
    const [hire] = (await must(depot.call("desk", "GET", "/hires?which=inHand"))).hires;
    const done = (duty: string, on: string, km: number) =>
      must(
        depot.call("desk", "POST", "/vehicles/pv2/upkeep", {
          kind: "done",
          duty,
          on,
          km,
          who: "An invented workshop",
        }),
      );
    const due = async () =>
      (await must(depot.call("desk", "GET", `/hires/${hire.id}`))).glass.gates
        .find(({ gate }: { gate: string }) => gate === "dueDates")
        .findings.map(({ finding }: { finding: { facts: { kind?: string } } }) => finding)
        .filter(({ facts }: { facts: { kind?: string } }) => facts.kind === "service");
    await done("service", "2026-01-10", 10_000);
    // read on the first of July, 600 km before it is due; the hire ends five days later
    await done("habitation", "2026-07-01", 41_400);
    expect(await due()).toEqual([]);
    await change({ kmADay: 121 });
    expect(await due()).toMatchObject([
      { code: "due.distance", facts: { endKm: { value: 42_005 }, dueKm: { value: 42_000 } } },
    ]);
  });
});

describe("messages", () => {
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("go on the depot's days; what would go at once is told before, and nothing goes twice", async () => {
    depot.at("2026-06-20T08:00:00.000Z");
    const sender = { fromName: "", fromAddress: "desk@example.org", replyTo: "", version: 0 };
    const automatic = ["preHire", "dayBefore", "returnReminder"];
    await must(depot.call("manager", "PUT", "/message-settings", { ...sender, automatic }));
    depot.at("2026-06-24T12:00:00.000Z");
    const asked = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    const { id } = (await must(depot.call("desk", "POST", "/hires", asked))).hire;
    await must(depot.call("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: true }));
    await must(depot.call("desk", "POST", `/hires/${id}/book`));
    const planned = async () =>
      (await plannedMessages(depot.store, depot.context.now().toISOString(), "2026-09-01")).map(
        ({ kind, dueAt }) => [kind, dueAt],
      );
    expect(await planned()).toEqual([
      ["preHire", "2026-06-26T08:00:00.000Z"],
      ["dayBefore", "2026-07-02T08:00:00.000Z"],
    ]);
    const { unsent, next, now } = await read();
    expect([now, next]).toMatchObject([
      "2026-06-24T13:00",
      { from: "2026-07-03T12:15", to: "2026-07-06T10:00" },
    ]);
    expect(unsent).toEqual([
      { kind: "preHire", since: "2026-06-20T09:00", days: ["2026-07-03"] },
      { kind: "dayBefore", since: "2026-06-20T09:00", days: ["2026-07-03"] },
      { kind: "returnReminder", since: "2026-06-20T09:00", days: [] },
    ]);
    await change({ messageDays: { preHire: 10, dayBefore: 2, returnReminder: 2, statement: 0 } });
    expect(await planned()).toEqual([
      ["preHire", "2026-06-23T08:00:00.000Z"],
      ["dayBefore", "2026-07-01T08:00:00.000Z"],
    ]);
    // what it says of the days holds on the day on which it goes
    depot.at("2026-07-01T08:00:00.000Z");
    const preview = await must(depot.call("desk", "GET", `/hires/${id}/message?kind=dayBefore`));
    expect([preview.subject, preview.body]).toEqual([
      expect.stringMatching(/^In 2 days: hire/),
      expect.stringContaining("in 2 days we hand over"),
    ]);
    depot.at("2026-07-02T12:00:00.000Z");
    const later = await must(depot.call("desk", "GET", `/hires/${id}/message?kind=dayBefore`));
    expect(later.subject).toMatch(/^Tomorrow: hire/);
  });
});

describe("the statement", () => {
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("goes as soon as a hire is settled, or on the morning so many days later", async () => {
    const sender = { fromName: "", fromAddress: "desk@example.org", replyTo: "", version: 0 };
    await must(depot.call("manager", "PUT", "/message-settings", { ...sender, automatic: ["statement"] }));
    const { id } = await liveHire(depot);
    const { differences } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
    const classes = differences.map((each: { id: string }) => ({
      id: each.id,
      class: "fairWear",
      reason: "small and shallow",
    }));
    await must(depot.call("desk", "PUT", `/hires/${id}/classes`, { classes }));
    const settled = depot.context.now().toISOString();
    await must(depot.call("desk", "POST", `/hires/${id}/settlement`));
    const due = async () =>
      (await plannedMessages(depot.store, settled, "2026-12-01")).map(({ dueAt }) => dueAt);
    expect(await due()).toEqual([settled]);
    await change({ messageDays: { ...USUAL_FIGURES.messageDays, statement: 3 } });
    expect(await due()).toEqual(["2026-07-09T08:00:00.000Z"]);
  });
});
