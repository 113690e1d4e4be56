import type { DepotRecord } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { type LivedHire, liveHire, makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";
import type { Operation } from "./operation.ts";
import { operations } from "./operations.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

const NEXT = { from: "2026-07-10T12:15", to: "2026-07-13T10:00" };
const OTHER = { name: "Otto Elsewhere", telephone: "07700 900102", email: "otto@example.org" };

/** Every operation that a link of a hire opens, with its photograph where it asks for one. */
const opened = (token: string, sha256: string) =>
  (Object.entries(operations) as [string, Operation][])
    .filter(([id, { access }]) => access === "link" && id !== "readCalendar")
    .map(([id, { method, url }]) => ({
      id,
      method,
      url: `/api${url.replace(":token", token).replace(":sha256", sha256).replace(":paper", "condition")}`,
    }));

describe("the link of a hire", () => {
  let depot: TestDepot;
  let hire: LivedHire;
  let token: string;
  let otherId: string;
  let otherPhotograph: string;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    hire = await liveHire(depot);
    token = (await depot.call("desk", "POST", `/hires/${hire.id}/hirer-link`)).body.token;
    const asked = { customer: OTHER, party: PARTY, ...NEXT, vehicleId: "pv2" };
    otherId = (await depot.call("desk", "POST", "/hires", asked)).body.hire.id;
    otherPhotograph = await sendPhotograph(depot, otherId, await makeJpeg(320, 240));
  });
  afterAll(() => depot.close());

  const see = async (sha256: string) =>
    (await depot.app.inject({ method: "GET", url: `/api/guide/${token}/photos/${sha256}?size=large` }))
      .statusCode;
  const send = (...records: readonly unknown[]) =>
    depot.call(null, "POST", `/guide/${token}/records`, { records });
  const device = (chain: string, refs: { hireId: string; vehicleId?: string }) =>
    makeDevice("phone", chain, refs, depot.context.now);
  const reading = { about: "leisureBattery.panel", value: 12.4, unit: "V", direction: "road" };

  it("is the way to seven operations and no more", () => {
    expect(opened(token, otherPhotograph).map(({ id }) => id)).toEqual([
      "readOwnPaper",
      "readStatement",
      "answerStatement",
      "readGuide",
      "addGuideRecords",
      "putGuidePhoto",
      "readGuidePhoto",
    ]);
  });

  it("tells nothing of another hire of the same vehicle, in the guide or in the statement", async () => {
    expect((await depot.call("desk", "POST", `/hires/${hire.id}/settlement`)).status).toBe(200);
    for (const path of ["", "/statement"]) {
      const { status, body } = await depot.call(null, "GET", `/guide/${token}${path}`);
      expect(status, path).toBe(200);
      const text = JSON.stringify(body);
      expect(text).toContain(CUSTOMER.name);
      for (const of of [otherId, OTHER.name, OTHER.email, OTHER.telephone, otherPhotograph])
        expect(text).not.toContain(of);
    }
  });

  it("opens the photographs of its own hire and none of another", async () => {
    expect(await see(hire.photographs.out)).toBe(200);
    expect(await see(otherPhotograph)).toBe(404);
  });

  it("is not opened to another hire's photograph by a record of its own that names it", async () => {
    const refs = { hireId: hire.id, vehicleId: "pv2" };
    const statement = (await depot.call(null, "GET", `/guide/${token}/statement`)).body;
    const about = statement.result.lines[0].id;
    const shot = device(`${hire.id}.statement`, refs)("photograph", {
      about,
      sha256: otherPhotograph,
      by: "hirer",
    });
    const reply = device(`${hire.id}.statement`, refs)("reply", {
      about,
      answer: "dispute",
      text: "It was there",
      photographs: [hire.photographs.out, otherPhotograph],
    });
    for (const [record, path] of [
      [shot, "records.0.content.sha256"],
      [reply, "records.0.content.photographs"],
    ] as const) {
      const { status, body } = await send(record);
      expect([status, body.error?.problems]).toEqual([
        400,
        [{ path, expected: "expected a photograph of this hire" }],
      ]);
    }
    expect(await see(otherPhotograph)).toBe(404);
    expect((await depot.call("desk", "GET", `/hires/${hire.id}`)).body.settlement.entries).toEqual([]);
  });

  it.each([
    ["the chain", () => device(`${otherId}.road`, { hireId: hire.id }), "records.0.chain"],
    ["the hire", () => device(`${hire.id}.road`, { hireId: otherId }), "records.0.refs.hireId"],
    [
      "the vehicle",
      () => device(`${hire.id}.road`, { hireId: hire.id, vehicleId: "pv2-b" }),
      "records.0.refs.vehicleId",
    ],
  ])("records nothing under %s of another", async (_, make, path) => {
    const { status, body } = await send(make()("reading", reading));
    expect(status).toBe(400);
    expect(body.error.problems[0]?.path).toBe(path);
    const kept = async (id: string) => {
      const { records } = (await depot.call("desk", "GET", `/hires/${id}/records`)).body;
      return records.filter((each: DepotRecord) => each.refs.hireId === id).length;
    };
    expect([await kept(otherId), (await kept(hire.id)) > 0]).toEqual([0, true]);
  });

  it("opens nothing once a newer link was made, is too old, or was guessed", async () => {
    const { body: newer } = await depot.call("desk", "POST", `/hires/${hire.id}/hirer-link`);
    const record = device(`${hire.id}.road`, { hireId: hire.id })("reading", reading);
    const sent = (id: string): object =>
      id === "addGuideRecords" ? { records: [record] } : { lineId: "none", answer: "accept", text: "" };
    const open = async (of: string) =>
      Promise.all(
        opened(of, hire.photographs.out).map(async ({ id, method, url }) => {
          const { statusCode, body } = await depot.app.inject({
            method: method as "GET",
            url,
            ...(method === "GET" ? {} : { payload: sent(id) }),
            ...(id === "putGuidePhoto" ? { headers: { "content-type": "image/jpeg" } } : {}),
          });
          return [id, statusCode, statusCode === 200 ? "" : JSON.parse(body).error.code];
        }),
      );
    const shut = opened(token, "").map(({ id }) => [id, 404, "linkUnusable"]);
    expect(await open(token)).toEqual(shut);
    expect(await open("x".repeat(43))).toEqual(shut);
    const now = await open(newer.token);
    expect(now.filter(([, status]) => status === 404)).toEqual([]);
    depot.at(newer.expires);
    expect(await open(newer.token)).toEqual(shut);
  });
});
