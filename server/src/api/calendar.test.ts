import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { testedStores } from "../store/stores-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

const lines = (...events: readonly (readonly string[])[]) =>
  [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//invented//EN",
    ...events.flatMap((each, k) => ["BEGIN:VEVENT", `UID:u${k}@example.org`, ...each, "END:VEVENT"]),
    "END:VCALENDAR",
    "",
  ].join("\r\n");

describe.each(testedStores())("calendars on $kind", ({ kind }) => {
  let depot: TestDepot;
  let hireId = "";
  beforeAll(async () => {
    depot = await makeDepot(kind);
    const customer = { ...CUSTOMER, name: "Ada; Invented, the \\ first" };
    const asked = {
      customer,
      party: PARTY,
      from: "2026-10-20T14:00",
      to: "2026-10-27T10:00",
      vehicleId: "pv2",
    };
    hireId = (await depot.call("desk", "POST", "/hires", asked)).body.hire.id;
    await depot.call("desk", "POST", `/hires/${hireId}/quote`, { accept: true });
    expect((await depot.call("desk", "POST", `/hires/${hireId}/book`)).status).toBe(200);
    const block = {
      kind: "mot",
      note: "MOT; bring papers,\nkeys",
      from: "2026-11-02T00:00",
      to: "2026-11-04T00:00",
    };
    expect((await depot.call("desk", "POST", "/vehicles/pv2/blocks", block)).status).toBe(200);
  }, 60_000);
  afterAll(() => depot.close());

  const fetched = async (url: string) =>
    depot.app.inject({ method: "GET", url: url.replace(depot.context.publicUrl, "") });
  const eventsOf = (text: string) =>
    new ICAL.Component(ICAL.parse(text) as unknown[])
      .getAllSubcomponents("vevent")
      .map((each) => new ICAL.Event(each));
  const make = async (body: object) => (await depot.call("desk", "POST", "/calendar-feeds", body)).body;

  test("the diary by its link: hires and blocks, over the clock change, without names unless asked for", async () => {
    const { url } = await make({ kind: "depot" });
    const answer = await fetched(url);
    expect(answer.headers["content-type"]).toContain("text/calendar");
    const [hire, block] = eventsOf(answer.body);
    expect(hire?.startDate.toJSDate().toISOString()).toBe("2026-10-20T13:00:00.000Z");
    expect(hire?.endDate.toJSDate().toISOString()).toBe("2026-10-27T10:00:00.000Z");
    expect(answer.body).not.toContain("Ada");
    expect(block?.startDate.isDate).toBe(true);
    expect([block?.startDate.toString(), block?.endDate.toString()]).toEqual(["2026-11-02", "2026-11-04"]);
    expect(block?.description).toBe("MOT; bring papers,\nkeys");
    const named = await make({ kind: "vehicle", about: "pv2", withNames: true });
    expect(eventsOf((await fetched(named.url)).body)[0]?.summary).toContain("Ada; Invented, the \\ first");
    const other = await make({ kind: "vehicle", about: "pv2-b" });
    expect(eventsOf((await fetched(other.url)).body)).toEqual([]);
  });

  test("a hirer's calendar says when to come, shows a cancelled hire as cancelled, and ends with the person", async () => {
    const { url } = await make({ kind: "hire", about: hireId });
    const [keys, back] = eventsOf((await fetched(url)).body);
    expect(keys?.summary).toMatch(/^Keys: /);
    expect(back?.endDate.toJSDate().toISOString()).toBe("2026-10-27T10:00:00.000Z");
    await depot.call("desk", "POST", `/hires/${hireId}/end`, { as: "cancelled", reason: "A test" });
    expect((await fetched(url)).body).toContain("STATUS:CANCELLED");
    await depot.store.customers.erase((await depot.store.hires.get(hireId))?.customerId ?? "", "test");
    expect((await fetched(url)).statusCode).toBe(404);
  });

  test("an ended link, an unknown one and one with nonsense open nothing; the token stands nowhere", async () => {
    const { url, feed } = await make({ kind: "depot" });
    expect((await depot.call("yard", "POST", `/calendar-feeds/${feed.id}/end`)).status).toBe(403);
    expect((await depot.call("desk", "POST", `/calendar-feeds/${feed.id}/end`)).status).toBe(200);
    expect((await depot.call("desk", "POST", `/calendar-feeds/${feed.id}/end`)).status).toBe(404);
    for (const each of [url, `${depot.context.publicUrl}/api/calendar/${"x".repeat(43)}`])
      expect((await fetched(each)).statusCode).toBe(404);
    const listed = await depot.call("desk", "GET", "/calendar-feeds");
    expect(JSON.stringify(listed.body)).not.toContain(url.split("/").at(-1));
    for (const body of [
      { kind: "vehicle" },
      { kind: "hire", about: "nobody" },
      { kind: "depot", about: "pv2" },
    ])
      expect((await depot.call("desk", "POST", "/calendar-feeds", body)).body.error.problems[0].path).toBe(
        "about",
      );
  });

  test("a calendar file: a dry run changes nothing, then all of it comes in at once, and the same file again adds nothing", async () => {
    const text = lines(
      ["SUMMARY:Laid up", "DTSTART;VALUE=DATE:20261201", "DTEND;VALUE=DATE:20261215"],
      [
        "SUMMARY:Wash",
        "DTSTART;TZID=Europe/London:20260706T080000",
        "DURATION:PT1H",
        "RRULE:FREQ=WEEKLY;COUNT=3",
      ],
      ["SUMMARY:On a block", "DTSTART:20261102T090000Z", "DURATION:PT1H"],
      ["SUMMARY:Elsewhere", "DTSTART;TZID=Atlantis:20261102T090000", "DURATION:PT1H"],
    );
    const send = (confirm?: object) =>
      depot.call("desk", "POST", "/vehicles/pv2/calendar", {
        text,
        kind: "layUp",
        ...(confirm && { confirm }),
      });
    const blocks = async () =>
      (await depot.store.blocks.between("2026-01-01T00:00:00Z", "2027-12-31T00:00:00Z", ["pv2"])).length;
    const before = await blocks();
    const dry = await send();
    expect(dry.body).toMatchObject({ done: false, skipped: 0, until: "2028-07-01T09:00" });
    expect(dry.body.added).toHaveLength(4);
    expect(dry.body.added[0]).toEqual({
      title: "Laid up",
      from: "2026-12-01T00:00",
      to: "2026-12-15T00:00",
      allDay: true,
    });
    expect(dry.body.rejected).toMatchObject([
      { title: "Elsewhere", why: "unknownZone", zone: "Atlantis" },
      { title: "On a block", why: "taken", from: "2026-11-02T09:00" },
    ]);
    expect(await blocks()).toBe(before);
    expect((await send({ added: 5, rejected: 2 })).body.error.code).toBe("stale");
    expect(await blocks()).toBe(before);
    expect((await send({ added: 4, rejected: 2 })).body.done).toBe(true);
    expect(await blocks()).toBe(before + 4);
    expect((await send()).body).toMatchObject({ added: [], skipped: 4 });
    const bad = { text: "no calendar", kind: "layUp" };
    expect(
      (await depot.call("desk", "POST", "/vehicles/pv2/calendar", bad)).body.error.problems[0].path,
    ).toBe("file");
    expect((await depot.call("yard", "POST", "/vehicles/pv2/calendar", bad)).status).toBe(403);
  });
});
