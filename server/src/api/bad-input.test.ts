import { createHash } from "node:crypto";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heron, makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";

const PARTY = { travellers: [{ id: "t1", kind: "adult" }], dogs: 0, experience: "first" };
const CUSTOMER = { name: "Example", telephone: "07700 900000", email: "e@example.org" };
const ENQUIRY = { customer: CUSTOMER, party: PARTY, from: "2026-08-01T12:00", to: "2026-08-08T10:00" };

describe("bad input names the field, and nothing is half written", () => {
  let depot: TestDepot;
  let hireId = "";
  const hires = async () => (await depot.store.hires.list()).rows.length;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    const { status, body } = await depot.call("desk", "POST", "/hires", { ...ENQUIRY, vehicleId: "pv2" });
    expect(status).toBe(200);
    hireId = body.hire.id;
  });
  afterAll(() => depot.close());

  const refusedAt = async (path: string, ...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer.status, JSON.stringify(answer.body)).toBe(400);
    expect(answer.body.error.message).not.toBe("");
    expect(answer.body.error.problems.map((each: { path: string }) => each.path)).toContain(path);
  };

  it("malformed JSON, a body that is not JSON, and 2 MB of text", async () => {
    const before = await hires();
    const send = async (payload: string, type = "application/json") => {
      const cookie = depot.cookie("desk");
      const answer = await depot.app.inject({
        method: "POST",
        url: "/api/hires",
        headers: { "content-type": type, cookie },
        payload,
      });
      return [answer.statusCode, answer.json().error.code];
    };
    expect(await send('{"customer": ')).toEqual([400, "badInput"]);
    expect(await send("a=b", "application/x-www-form-urlencoded")).toEqual([400, "badInput"]);
    expect(await send(JSON.stringify({ ...ENQUIRY, wishes: "x".repeat(2_000_000) }))).toEqual([
      413,
      "tooLarge",
    ]);
    expect(await hires()).toBe(before);
  });

  it("missing fields, unknown fields, reversed and impossible dates", async () => {
    const before = await hires();
    await refusedAt("customer", "desk", "POST", "/hires", { ...ENQUIRY, customer: undefined });
    await refusedAt("party.travellers", "desk", "POST", "/hires", {
      ...ENQUIRY,
      party: { ...PARTY, travellers: [] },
    });
    await refusedAt("", "desk", "POST", "/hires", { ...ENQUIRY, stage: "closed" });
    await refusedAt("to", "desk", "POST", "/hires", { ...ENQUIRY, to: "2026-07-01T10:00" });
    await refusedAt("from", "desk", "POST", "/hires", { ...ENQUIRY, from: "2026-02-30T10:00" });
    await refusedAt("from", "desk", "POST", "/hires", {
      ...ENQUIRY,
      from: "2026-03-29T01:30",
      to: "2026-04-02T10:00",
    });
    await refusedAt("vehicleId", "desk", "POST", "/hires", { ...ENQUIRY, vehicleId: "none such" });
    expect(await hires()).toBe(before);
  });

  it("impossible masses and negative tanks in a vehicle", async () => {
    const masses = heron().masses;
    const put = (description: unknown) => ["manager", "PUT", "/vehicles/pv2", { description }] as const;
    await refusedAt("description.masses.miroKg", ...put({ ...heron(), masses: { ...masses, miroKg: 3600 } }));
    await refusedAt("description.masses.mamKg", ...put({ ...heron(), masses: { ...masses, mamKg: -1 } }));
    const systems = heron().systems.map((system) =>
      system.kind === "freshWater" ? { ...system, spec: { ...system.spec, litres: -5 } } : system,
    );
    const at = systems.findIndex(({ kind }) => kind === "freshWater");
    await refusedAt(`description.systems.${at}.spec.litres`, ...put({ ...heron(), systems }));
    expect(await depot.store.vehicles.versions("pv2")).toHaveLength(1);
  });

  it("a trip that runs backwards, an unknown zone, a place off the map", async () => {
    const place = { name: "A", country: "GB", latitudeDeg: 55, longitudeDeg: -3 };
    const trip = {
      depot: place,
      depart: "2026-08-01T12:00",
      return: "2026-08-08T10:00",
      returnDrive: { distanceKm: 1, minutes: 1 },
      timeZone: "Europe/London",
      stops: [],
      departWith: {},
      settings: {},
    };
    await refusedAt("return", "desk", "PUT", `/hires/${hireId}/trip`, {
      ...trip,
      return: "2026-07-08T10:00",
    });
    await refusedAt("timeZone", "desk", "PUT", `/hires/${hireId}/trip`, {
      ...trip,
      timeZone: "Nowhere/Town",
    });
    await refusedAt("depot.latitudeDeg", "desk", "PUT", `/hires/${hireId}/trip`, {
      ...trip,
      depot: { ...place, latitudeDeg: 99 },
    });
  });

  it("an override of law is refused with its reason, and of nothing at all as bad input", async () => {
    const crowd = { ...PARTY, travellers: [1, 2, 3].map((k) => ({ id: `t${k}`, kind: "adult" })) };
    await depot.call("desk", "PUT", `/hires/${hireId}/party`, crowd);
    const ask = { gate: "seats", code: "seats.tooFewBelts", reason: "they are slim" };
    const { body } = await depot.call("manager", "GET", `/hires/${hireId}`);
    const found = body.glass.gates[0].findings.find(
      (each: { finding: { code: string } }) => each.finding.code === ask.code,
    );
    expect(found.overridable).toBe("never");
    const about = found.finding.about === undefined ? {} : { about: found.finding.about };
    const refused = await depot.call("manager", "POST", `/hires/${hireId}/overrides`, { ...ask, ...about });
    expect(refused).toMatchObject({
      status: 403,
      body: { error: { code: "overrideRefused", findings: [{ basis: "law" }] } },
    });
    await refusedAt("code", "manager", "POST", `/hires/${hireId}/overrides`, { ...ask, code: "no.such" });
    expect(await depot.store.overrides.ofHire(hireId)).toEqual([]);
  });

  it("a batch with one bad record appends none, and names it", async () => {
    const make = makeDevice("t", `${hireId}.out`, { hireId, vehicleId: "pv2" }, depot.context.now);
    const [first, second, third] = [
      make("walkStarted", { direction: "out" }),
      make("note", { text: "a" }),
      make("note", { text: "b" }),
    ];
    const forged = { ...second, content: { text: "changed" } };
    await refusedAt("records.1.hash", "yard", "POST", "/records", { records: [first, forged] });
    const gap = await depot.call("yard", "POST", "/records", { records: [first, third] });
    expect(gap).toMatchObject({
      status: 409,
      body: { error: { code: "recordConflict", problems: [{ path: "records.1" }] } },
    });
    expect(await depot.store.records.list({ hireId })).toEqual([]);
    const stranger = makeDevice("t", "x.out", { hireId: "x" }, depot.context.now)("note", { text: "a" });
    await refusedAt("records.0.refs.hireId", "yard", "POST", "/records", { records: [stranger] });
  });

  it("a photograph that is a text file is not kept; a JPEG is, once, under its own hash", async () => {
    const cookie = depot.cookie("desk");
    const put = (bytes: Buffer, sha256 = createHash("sha256").update(bytes).digest("hex")) =>
      depot.app.inject({
        method: "PUT",
        url: `/api/photos/${sha256}?hire=${hireId}`,
        headers: { cookie, "content-type": "image/jpeg" },
        payload: bytes,
      });
    const text = await put(Buffer.from("this is no photograph"));
    expect([text.statusCode, text.json().error.code]).toEqual([400, "notAPhotograph"]);
    const jpeg = await sharp({ create: { width: 40, height: 30, channels: 3, background: "#336" } })
      .jpeg()
      .toBuffer();
    const sha256 = createHash("sha256").update(jpeg).digest("hex");
    expect((await put(jpeg, "0".repeat(64))).statusCode).toBe(400);
    expect((await put(jpeg)).json()).toMatchObject({ state: "kept", again: false });
    expect((await put(jpeg)).json()).toMatchObject({ state: "kept", again: true });
    const get = (size: string) =>
      depot.app.inject({ url: `/api/photos/${sha256}?size=${size}`, headers: { cookie } });
    expect((await get("original")).rawPayload.equals(jpeg)).toBe(true);
    expect((await get("small")).headers["content-type"]).toBe("image/jpeg");
    expect(
      (await depot.app.inject({ method: "HEAD", url: `/api/photos/${sha256}`, headers: { cookie } }))
        .statusCode,
    ).toBe(200);
    expect(
      (await depot.app.inject({ method: "HEAD", url: `/api/photos/${"1".repeat(64)}`, headers: { cookie } }))
        .statusCode,
    ).toBe(404);
  });

  it("a link that was guessed, replaced or is of another hire opens nothing else", async () => {
    expect((await depot.call(null, "GET", `/guide/${"x".repeat(43)}`)).body.error.code).toBe("linkUnusable");
    await depot.call("desk", "PUT", `/hires/${hireId}/party`, PARTY);
    await depot.call("desk", "POST", `/hires/${hireId}/quote`, { accept: true });
    const one = (await depot.call("desk", "POST", `/hires/${hireId}/hirer-link`)).body.token;
    const two = (await depot.call("desk", "POST", `/hires/${hireId}/hirer-link`)).body.token;
    expect((await depot.call(null, "GET", `/guide/${one}`)).status).toBe(404);
    expect((await depot.call(null, "GET", `/guide/${two}`)).body.hireId).toBe(hireId);
    depot.at("2026-12-01T08:00:00.000Z");
    expect((await depot.call(null, "GET", `/guide/${two}`)).status).toBe(404);
    depot.at("2026-07-01T08:00:00.000Z");
  });

  it("the set-up link serves once, and not at all once there is a firm", async () => {
    expect((await depot.call(null, "GET", `/setup/${"x".repeat(43)}`)).body).toEqual({ open: false });
  });
});
