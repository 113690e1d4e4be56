import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { testedStores } from "../store/stores-for-tests.ts";
import { heron, makeDepot, type TestDepot } from "./depot-for-tests.ts";

const CUSTOMER = { name: "Ada Invented", telephone: "07700 900123", email: "ada@example.org" };
const PARTY = {
  travellers: [
    { id: "a", name: "Ada Invented", kind: "adult", massKg: 70 },
    { id: "b", kind: "child", ageYears: 9, heightCm: 140, massKg: 30 },
  ],
  dogs: 0,
  experience: "first",
};
const PERIOD = { from: "2026-07-20T14:00", to: "2026-07-27T10:00" };
const LICENCE = {
  issuedBy: "GB",
  firstCarEntitlement: "2004-06-01",
  categories: [{ category: "B", from: "2004-06-01", to: "2055-03-01" }],
  endorsements: [],
};
const DRIVER = {
  id: "d1",
  name: "Ada Invented",
  born: "1985-03-02",
  main: true,
  faultIncidents3y: 0,
  disqualified3y: false,
  licence: LICENCE,
};
const CHILD = "seats.gb.childRestraint.belowCm";
const PLACE = { name: "A field", country: "FR", latitudeDeg: 48.4, longitudeDeg: -4.5 };
const TRIP = {
  depot: { name: "Depot", country: "GB", latitudeDeg: 54.4, longitudeDeg: -2.9 },
  depart: PERIOD.from,
  return: PERIOD.to,
  returnDrive: { distanceKm: 500, minutes: 420 },
  timeZone: "Europe/London",
  departWith: {},
  settings: {},
  stops: [
    {
      place: PLACE,
      arrive: "2026-07-21T18:00",
      leave: "2026-07-26T08:00",
      drive: { distanceKm: 500, minutes: 420 },
      pitch: {
        postAmperes: 10,
        freshWater: true,
        wasteDrain: true,
        cassettePoint: true,
        lpgExchange: false,
      },
      acts: ["plugIn"],
    },
  ],
};

describe.each(testedStores())("rules, notes and drivers on $kind", ({ kind }) => {
  let depot: TestDepot;
  let hire: string;
  beforeAll(async () => {
    depot = await makeDepot(kind);
    const made = await depot.call("desk", "POST", "/hires", {
      customer: CUSTOMER,
      party: PARTY,
      ...PERIOD,
      vehicleId: "pv2",
    });
    hire = made.body.hire.id;
    await depot.call("desk", "PUT", `/hires/${hire}/drivers`, { drivers: [DRIVER] });
  });
  afterAll(() => depot.close());

  const seatsCodes = async () => {
    const { body } = await depot.call("desk", "GET", `/hires/${hire}`);
    const gate = body.glass.gates.find((each: { gate: string }) => each.gate === "seats");
    return gate.findings.map(({ finding }: { finding: { code: string } }) => finding.code);
  };

  describe("the page of rules", () => {
    test("every rule comes with value, unit, source, day and doubt; found by word, country and topic", async () => {
      const { body } = await depot.call("yard", "GET", "/rules?country=AT&topic=toll&q=toll%20box");
      expect(body.counts.all).toBeGreaterThan(200);
      for (const rule of body.rules) expect(rule).toMatchObject({ country: "AT", topic: "toll" });
      const all = await depot.call("desk", "GET", `/rules?q=${CHILD}`);
      expect(all.body.rules).toHaveLength(1);
      expect(all.body.rules[0]).toMatchObject({
        id: CHILD,
        now: { value: 135, unit: "cm" },
        own: [],
        off: null,
      });
    });

    test("the desk may look but not change; a wrong value names its field", async () => {
      const own = {
        value: 150,
        validFrom: "2026-07-01",
        readOn: "2026-07-01",
        source: "gov.uk page, read",
        confidence: "read",
      };
      expect((await depot.call("desk", "PUT", `/rules/${CHILD}`, own)).status).toBe(403);
      const wrong = await depot.call("manager", "PUT", `/rules/${CHILD}`, { ...own, value: "tall" });
      expect(wrong.status).toBe(400);
      expect(wrong.body.error.problems).toMatchObject([{ path: "value" }]);
      const future = await depot.call("manager", "PUT", `/rules/${CHILD}`, { ...own, readOn: "2026-07-02" });
      expect(future.body.error.problems).toMatchObject([{ path: "readOn" }]);
      const off = await depot.call("manager", "PUT", "/rules/licence.eu.motorhome.maxMamKg", {
        ...own,
        value: 4250,
      });
      expect(off.status).toBe(400);
      expect((await depot.call("manager", "PUT", "/rules/no.such.rule", own)).status).toBe(404);
    });

    test("a manager's own version decides the hires from its day on, the shipped one stays visible, and it can be taken back", async () => {
      expect(await seatsCodes()).not.toContain("seats.childRestraint");
      const before = await depot.call("desk", "GET", "/rules");
      const own = {
        value: 150,
        validFrom: "2026-07-01",
        readOn: "2026-07-01",
        source: "gov.uk page, read",
        confidence: "read",
      };
      const { status, body } = await depot.call("manager", "PUT", `/rules/${CHILD}`, own);
      expect(status).toBe(200);
      expect(body).toMatchObject({
        now: { value: 150 },
        own: [{ by: "Pat Manager", rule: own }],
        shipped: [{ value: 135 }],
      });
      expect(await seatsCodes()).toContain("seats.childRestraint");
      const after = await depot.call("desk", "GET", "/rules");
      expect(after.body.bookId).not.toBe(before.body.bookId);
      expect(after.body.counts.own).toBe(1);
      const sources = (await depot.call("desk", "GET", `/hires/${hire}`)).body.glass.gates
        .flatMap((gate: { findings: { finding: { code: string; sources: string[] } }[] }) => gate.findings)
        .find(({ finding }: { finding: { code: string } }) => finding.code === "seats.childRestraint")
        .finding.sources;
      expect(sources[0]).toContain("gov.uk page, read");
      const back = await depot.call("manager", "POST", `/rules/${CHILD}/withdrawals`, {
        validFrom: "2026-07-01",
      });
      expect(back.body).toMatchObject({ now: { value: 135 }, own: [] });
      expect(await seatsCodes()).not.toContain("seats.childRestraint");
      const twice = await depot.call("manager", "POST", `/rules/${CHILD}/withdrawals`, {
        validFrom: "2026-07-01",
      });
      expect(twice.status).toBe(400);
    });

    test("a rule from memory falls due for checking until somebody read it again", async () => {
      const due = await depot.call("manager", "GET", "/rules?due=true");
      const memory = due.body.rules.find((rule: { due: { reasons: string[] }; now: { readOn: string } }) =>
        rule.due.reasons.includes("memory"),
      );
      depot.at("2026-11-26T09:00:00.000Z");
      const read = await depot.call("manager", "POST", `/rules/${memory.id}/readings`, {
        readOn: "2026-11-26",
        source: "the source itself",
      });
      expect(read.body).toMatchObject({
        now: { readOn: "2026-11-26", source: "the source itself", confidence: "read" },
        readAgain: [{ by: "Pat Manager", readOn: "2026-11-26" }],
        due: null,
      });
      const earlier = { readOn: "2026-11-25", source: "the source itself" };
      expect((await depot.call("manager", "POST", `/rules/${memory.id}/readings`, earlier)).status).toBe(400);
      depot.at("2026-07-01T08:00:00.000Z");
    });

    test("another depot's rules are untouched by all this", async () => {
      expect((await depot.store.rules.all()).length).toBeGreaterThan(0);
    });
  });

  describe("notes and promises", () => {
    test("one reappears on the day of its moment, and goes with a tick that can be taken back", async () => {
      const text = "Child seat for the left side, promised by telephone";
      const made = await depot.call("desk", "POST", `/hires/${hire}/notes`, {
        kind: "promise",
        text,
        moment: "counter",
      });
      expect(made.status).toBe(200);
      expect(made.body.notes).toMatchObject([{ text, on: "2026-07-20", isDue: false, by: "Dee Desk" }]);
      const day = async (date: string) =>
        (await depot.call("yard", "GET", `/reminders?date=${date}`)).body.notes;
      expect(await day("2026-07-19")).toEqual([]);
      expect(await day("2026-07-20")).toMatchObject([{ note: { text }, customer: "Ada Invented" }]);
      const { id } = made.body.notes[0];
      const done = await depot.call("yard", "PUT", `/notes/${id}/done`, { done: true });
      expect(done.body.notes[0].done).toMatchObject({ by: "Yo Yard" });
      expect(await day("2026-07-20")).toEqual([]);
      await depot.call("yard", "PUT", `/notes/${id}/done`, { done: false });
      expect(await day("2026-07-21")).toHaveLength(1);
    });

    test("a day of its own must be named, and an owner must be of this depot", async () => {
      const ask = (body: object) =>
        depot.call("desk", "POST", `/hires/${hire}/notes`, { text: "x", ...body });
      expect((await ask({ moment: "day" })).body.error.problems).toMatchObject([{ path: "on" }]);
      expect((await ask({ moment: "counter", on: "2026-07-04" })).status).toBe(400);
      expect((await ask({ ownerId: "nobody" })).body.error.problems).toMatchObject([{ path: "ownerId" }]);
    });

    test("who pays instead of the hirer is kept, shown and erased with the person", async () => {
      const payer = { name: "Invented Employer", email: "accounts@example.org" };
      expect((await depot.call("yard", "PUT", `/hires/${hire}/payer`, { payer })).status).toBe(403);
      expect((await depot.call("desk", "PUT", `/hires/${hire}/payer`, { payer })).body.payer).toEqual(payer);
      expect(
        (await depot.call("desk", "PUT", `/hires/${hire}/payer`, { payer: null })).body.payer,
      ).toBeNull();
    });
  });

  describe("drivers", () => {
    test("a code that still lives is sealed, serves once, and its result is kept without it", async () => {
      const code = `/hires/${hire}/drivers/d1/check-code`;
      const first = await depot.call("desk", "GET", `/hires/${hire}/driver-checks`);
      expect(first.body.drivers).toMatchObject([
        { askFrom: "2026-06-29", hasCode: true, code: null, checks: [] },
      ]);
      const dead = await depot.call("desk", "PUT", code, { code: "aB1cD2eF", madeOn: "2026-06-09" });
      expect(dead.body.error.problems).toMatchObject([{ path: "madeOn" }]);
      const given = await depot.call("desk", "PUT", code, { code: "aB1cD2eF", madeOn: "2026-07-01" });
      expect(given.body.drivers[0].code).toEqual({
        madeOn: "2026-07-01",
        lastDay: "2026-07-22",
        isUsable: true,
      });
      expect(JSON.stringify(given.body)).not.toContain("aB1cD2eF");
      expect((await depot.call("yard", "POST", `${code}/reading`)).status).toBe(403);
      expect((await depot.call("desk", "POST", `${code}/reading`)).body).toEqual({ code: "aB1cD2eF" });
      const check = { how: "code", consent: true, licence: LICENCE };
      const refused = await depot.call("desk", "POST", `/hires/${hire}/drivers/d1/checks`, {
        ...check,
        consent: false,
      });
      expect(refused.body.error.problems).toMatchObject([{ path: "consent" }]);
      const seen = await depot.call("desk", "POST", `/hires/${hire}/drivers/d1/checks`, check);
      expect(seen.body.drivers[0]).toMatchObject({
        mayDrive: "yes",
        code: null,
        checks: [{ how: "code", by: "Dee Desk", on: "2026-07-01", licence: LICENCE }],
      });
      const again = await depot.call("desk", "POST", `/hires/${hire}/drivers/d1/checks`, check);
      expect(again.body.error.problems).toMatchObject([{ path: "how" }]);
      expect((await depot.call("desk", "POST", `${code}/reading`)).status).toBe(404);
    });

    test("with the service down what was seen is recorded, and the hire goes with that as a condition", async () => {
      const ask = (body: object) =>
        depot.call("desk", "POST", `/hires/${hire}/drivers/d1/checks`, {
          how: "other",
          consent: true,
          licence: LICENCE,
          ...body,
        });
      expect((await ask({})).body.error.problems).toMatchObject([{ path: "seen" }]);
      await ask({ seen: "photocard, front and back, and a letter of the authority" });
      const { body } = await depot.call("desk", "GET", `/hires/${hire}`);
      const licence = body.glass.gates.find((each: { gate: string }) => each.gate === "licence");
      expect(licence.findings).toMatchObject([
        { finding: { code: "licence.otherEvidence", severity: "condition", facts: { by: "Dee Desk" } } },
      ]);
    });

    test("a driver nobody looked up is asked for from the day on which a code still lives at the keys", async () => {
      const { checkedOn: _, ...unseen } = { ...LICENCE, checkedOn: "2026-05-01" };
      await depot.call("desk", "PUT", `/hires/${hire}/drivers`, {
        drivers: [{ ...DRIVER, licence: unseen }],
      });
      await depot.call("desk", "POST", `/hires/${hire}/quote`, { extras: [], accept: true });
      const booked = await depot.call("desk", "POST", `/hires/${hire}/book`);
      expect(booked.status).toBe(200);
      const { body } = await depot.call("desk", "GET", "/reminders");
      expect(body.askForCode).toMatchObject([
        { driver: "Ada Invented", from: "2026-06-29", keys: "2026-07-20" },
      ]);
      depot.at("2026-06-28T08:00:00.000Z");
      expect((await depot.call("desk", "GET", "/reminders")).body.askForCode).toEqual([]);
      depot.at("2026-07-01T08:00:00.000Z");
    });
  });

  test("what is not checked for a hire is listed with why, and rules of the route that rest on nothing firm", async () => {
    await depot.call("desk", "PUT", `/hires/${hire}/trip`, TRIP);
    const { body } = await depot.call("desk", "GET", `/hires/${hire}/missing-rules`);
    const kinds = new Set(body.missing.map(({ kind: each }: { kind: string }) => each));
    expect([...kinds]).toEqual(
      expect.arrayContaining(["gateNotChecked", "findingNotChecked", "ruleFromMemory"]),
    );
    for (const each of body.missing)
      if (each.kind.startsWith("rule")) expect(each.source).toMatch(/read|memory/);
  });

  test("new criteria of the insurer say beforehand whom they would refer or refuse", async () => {
    const { body } = await depot.call("manager", "GET", "/terms");
    const { policy } = body.insurance;
    const ask = (change: object) =>
      depot.call("manager", "POST", "/insurance/preview", { policy: { ...policy, ...change } });
    const stricter = await ask({
      age: { min: 45, max: 75, outcome: "refer" },
      countries: [...policy.countries, "FR"],
    });
    expect(stricter.body.drivers).toMatchObject([
      {
        driver: "Ada Invented",
        today: "accept",
        proposed: "refer",
        findings: [{ code: "insurance.tooYoung" }],
      },
    ]);
    expect((await ask({})).body).toMatchObject({ drivers: [], asked: 1 });
    expect((await depot.call("desk", "POST", "/insurance/preview", { policy })).status).toBe(403);
  });

  test("an expired MOT is overridden by nobody, the manager neither", async () => {
    const document = {
      description: { ...heron(), id: "old", registration: "EX19 MOT", firstRegistered: "2019-03-01" },
      dueDates: [
        { kind: "mot", dueOn: "2026-06-30" },
        ...["tax", "insurance", "lpgCheck"].map((each) => ({ kind: each, dueOn: "2027-12-31" })),
      ],
      maxDogs: 0,
      vehicleClass: "panelVan",
    };
    await depot.store.vehicles.put({ of: "old", validFrom: "2026-03-01", document });
    const made = await depot.call("desk", "POST", "/hires", {
      customer: CUSTOMER,
      party: PARTY,
      ...PERIOD,
      vehicleId: "old",
    });
    const url = `/hires/${made.body.hire.id}/overrides`;
    const standing = made.body.glass.gates
      .find((each: { gate: string }) => each.gate === "dueDates")
      .findings.find(({ finding }: { finding: { about: string } }) => finding.about === "mot");
    expect(standing).toMatchObject({ overridable: "never", finding: { severity: "refuse", basis: "law" } });
    const body = {
      gate: "dueDates",
      code: standing.finding.code,
      about: "mot",
      reason: "the garage said so",
    };
    const insurer = { reference: "X1", acceptedBy: "Invented Insurer", on: "2026-07-01" };
    for (const as of ["manager", "desk"] as const) {
      for (const more of [{}, { insurer }]) {
        const answer = await depot.call(as, "POST", url, { ...body, ...more });
        expect(answer.status).toBe(403);
        expect(answer.body.error.code).toBe("overrideRefused");
      }
    }
    expect((await depot.call("yard", "POST", url, body)).status).toBe(403);
    expect((await depot.call(null, "POST", url, body)).status).toBe(401);
    // whatever was asked, it stands as it stood, and nothing was written down as allowed
    const { body: after } = await depot.call("manager", "GET", `/hires/${made.body.hire.id}`);
    const gate = after.glass.gates.find((each: { gate: string }) => each.gate === "dueDates");
    const mot = gate.findings.find(({ finding }: { finding: { about: string } }) => finding.about === "mot");
    expect(mot).toMatchObject({ overridable: "never", finding: { severity: "refuse" } });
    expect(mot.override ?? null).toBeNull();
    expect(after.glass.state).toBe("cannotGo");
  });
});
