import { createHash } from "node:crypto";
import type { DepotRecord } from "@setfair/records";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { type LivedHire, liveHire, makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";

/** What the hirer's phone makes, and how it sends it. */
function phoneOf(depot: TestDepot, hireId: string, token: string) {
  const refs = { hireId, vehicleId: "pv2" };
  const now = depot.context.now;
  const missed = makeDevice("phone", `${hireId}.missed`, refs, now);
  return {
    missed,
    statement: makeDevice("phone", `${hireId}.statement`, refs, now),
    mark: (more: object = {}) =>
      missed("mark", {
        about: "body.panelNearside",
        part: "body.panelNearside",
        view: "nearside",
        xShare: 0.4,
        yShare: 0.5,
        markKind: "dent",
        note: "Seen when we packed",
        photographs: [],
        direction: "out",
        by: "hirer",
        ...more,
      }),
    send: (...records: readonly DepotRecord[]) =>
      depot.call(null, "POST", `/guide/${token}/records`, { records }),
    photograph: async (jpeg: Buffer) => {
      const sha256 = createHash("sha256").update(jpeg).digest("hex");
      const { statusCode } = await depot.app.inject({
        method: "PUT",
        url: `/api/guide/${token}/photos/${sha256}`,
        headers: { "content-type": "image/jpeg" },
        payload: jpeg,
      });
      return { sha256, status: statusCode };
    },
    see: async (sha256: string) =>
      (await depot.app.inject({ method: "GET", url: `/api/guide/${token}/photos/${sha256}?size=small` }))
        .statusCode,
  };
}
type Phone = ReturnType<typeof phoneOf>;
const problemsOf = (answer: { body: { error?: { problems: { path: string; expected: string }[] } } }) =>
  answer.body.error?.problems ?? [];

/** A link made while the hire is on the road, as it was when the keys went. */
async function onTheRoad(depot: TestDepot): Promise<{ hire: LivedHire; token: string; phone: Phone }> {
  const hire = await liveHire(depot);
  const { body } = await depot.call("desk", "POST", `/hires/${hire.id}/hirer-link`);
  return { hire, token: body.token, phone: phoneOf(depot, hire.id, body.token) };
}

describe("marks that both missed, from the hirer's phone", () => {
  let depot: TestDepot;
  let road: Awaited<ReturnType<typeof onTheRoad>>;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    road = await onTheRoad(depot);
  });
  afterAll(() => depot.close());

  it("are taken within the window of the terms, with their photograph, and count as there on the way out", async () => {
    const { phone, hire, token } = road;
    depot.at("2026-07-03T20:00:00.000Z");
    const { sha256, status } = await phone.photograph(await makeJpeg());
    expect(status).toBe(200);
    const mark = phone.mark({ photographs: [sha256] });
    expect((await phone.send(mark)).status).toBe(200);
    // sent again after a lost answer: once
    expect((await phone.send(mark)).body.added).toBe(0);
    const { body } = await depot.call("desk", "GET", `/hires/${hire.id}/additions`);
    expect(body.until).toBe("2026-07-04T11:20:00.000Z");
    expect(body.additions).toEqual([
      expect.objectContaining({
        recordId: mark.id,
        part: "body.panelNearside",
        note: "Seen when we packed",
        isLate: false,
        photographs: [sha256],
      }),
    ]);
    expect((await depot.call(null, "GET", `/guide/${token}`)).body.additions).toEqual({
      until: "2026-07-04T11:20:00.000Z",
      isOver: false,
    });
    expect(await phone.see(sha256)).toBe(200);
  });

  it("are kept when they were made in time and arrive late for want of signal, and the desk sees both clocks", async () => {
    const { phone, hire } = road;
    depot.at("2026-07-04T10:00:00.000Z");
    const inTime = phone.mark({ note: "A second one" });
    depot.at("2026-07-05T09:00:00.000Z");
    expect((await phone.send(inTime)).status).toBe(200);
    const { body } = await depot.call("desk", "GET", `/hires/${hire.id}/additions`);
    expect(body.isOver).toBe(true);
    expect(body.additions[1]).toMatchObject({
      at: "2026-07-04T10:00:00.000Z",
      receivedAt: "2026-07-05T09:00:00.000Z",
      isLate: true,
    });
  });

  it("are refused after the window, naming the time, and so is a record that claims to be the depot's", async () => {
    const { phone, token, hire } = road;
    depot.at("2026-07-05T10:00:00.000Z");
    const late = await phone.send(phoneOf(depot, hire.id, token).mark());
    expect(late.status).toBe(400);
    expect(problemsOf(late)[0]).toMatchObject({ path: "records.0.deviceTime" });
    expect(problemsOf(late)[0]?.expected).toContain("2026-07-04T11:20");
    for (const [more, path] of [
      [{ by: "yard" }, "content.by"],
      [{ direction: "back" }, "content.direction"],
    ] as const)
      expect(problemsOf(await phone.send(phoneOf(depot, hire.id, token).mark(more)))[0]?.path).toBe(
        `records.0.${path}`,
      );
    const foreign = makeDevice("phone", `${hire.id}.out`, { hireId: hire.id }, depot.context.now);
    expect(problemsOf(await phone.send(foreign("look", { about: "x", saw: "same" })))[0]?.path).toBe(
      "records.0.chain",
    );
  });

  it("stand apart from the round that was signed, on the hire's page and on paper", async () => {
    const { token, hire } = road;
    const { records } = (await depot.call("desk", "GET", `/hires/${hire.id}`)).body;
    expect(records.out.marks).toBe(0);
    const paper = await depot.app.inject({ method: "GET", url: `/api/guide/${token}/papers/condition` });
    const text = (await readPdf(paper.rawPayload)).pages.join(" ").replaceAll(/\s+/g, " ");
    expect(text).toContain("No mark was recorded");
    expect(text).toContain("2 marks added by the hirer from their phone after the keys");
    expect(text).toContain("Seen when we packed");
  });

  it("see no photograph of another hire, and take none that is not a picture", async () => {
    const { phone } = road;
    // kept at the depot, but named by no record of this hire
    const foreign = await sendPhotograph(depot, road.hire.id, await makeJpeg(200, 100));
    expect(await phone.see(foreign)).toBe(404);
    expect((await phone.photograph(Buffer.from("no picture at all"))).status).toBe(400);
  });
});

describe("the statement on the hirer's phone", () => {
  let depot: TestDepot;
  let road: Awaited<ReturnType<typeof onTheRoad>>;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    road = await onTheRoad(depot);
  });
  afterAll(() => depot.close());
  const damageOf = (body: { result: { lines: { id: string; code: string }[] } }) =>
    body.result.lines.find(({ code }) => code === "damage");

  it("is not there before it was shown, and takes no answer", async () => {
    const { token, phone } = road;
    expect((await depot.call(null, "GET", `/guide/${token}`)).body.statementAt).toBeNull();
    expect((await depot.call(null, "GET", `/guide/${token}/statement`)).status).toBe(404);
    const early = phoneOf(depot, road.hire.id, token).statement;
    const reply = early("reply", { about: "mark:x", answer: "accept", text: "" });
    expect((await phone.send(reply)).status).toBe(404);
  });

  it("shows each line with how it went and how it came back", async () => {
    const { hire, token, phone } = road;
    const { body: found } = await depot.call("desk", "GET", `/hires/${hire.id}/differences`);
    const mark = found.differences.find((each: { kind: string }) => each.kind === "mark");
    await depot.call("desk", "PUT", `/hires/${hire.id}/classes`, {
      classes: [{ id: mark.id, class: "hirer", reason: "The side was whole in the photograph out" }],
    });
    expect((await depot.call("desk", "POST", `/hires/${hire.id}/settlement`)).status).toBe(200);
    const { body } = await depot.call(null, "GET", `/guide/${token}/statement`);
    const evidence = body.evidence.find(({ lineId }: { lineId: string }) => lineId === mark.id);
    expect(evidence).toEqual({
      lineId: mark.id,
      out: [hire.photographs.out],
      back: [hire.photographs.back],
    });
    for (const sha256 of [hire.photographs.out, hire.photographs.back])
      expect(await phone.see(sha256)).toBe(200);
  });

  it("takes a dispute with words and a photograph once, and holds the sum; the last answer to a line holds", async () => {
    const { token, phone } = road;
    const before = (await depot.call(null, "GET", `/guide/${token}/statement`)).body;
    const line = damageOf(before);
    const { sha256 } = await phone.photograph(await makeJpeg(320, 240));
    const shot = phone.statement("photograph", { about: line?.id ?? "", sha256, by: "hirer" });
    const said = { about: line?.id ?? "", answer: "dispute", text: "It was there", photographs: [sha256] };
    const reply = phone.statement("reply", said);
    expect((await phone.send(shot, reply)).status).toBe(200);
    expect((await phone.send(shot, reply)).body.added).toBe(0);
    const { body } = await depot.call(null, "GET", `/guide/${token}/statement`);
    const disputes = body.entries.filter(({ kind }: { kind: string }) => kind === "dispute");
    expect(disputes).toHaveLength(1);
    expect(disputes[0].document).toMatchObject({ text: "It was there", photographs: [sha256] });
    expect(body.result.disputed.pence).toBeGreaterThan(0);
    expect(await phone.see(sha256)).toBe(200);
    const accept = phone.statement("reply", { about: line?.id ?? "", answer: "accept", text: "" });
    expect((await phone.send(accept)).status).toBe(200);
    expect((await depot.call(null, "GET", `/guide/${token}/statement`)).body.result.disputed.pence).toBe(0);
  });

  it("refuses a line that is not there and a dispute that says no why, naming the field", async () => {
    const { token, phone, hire } = road;
    const line = damageOf((await depot.call(null, "GET", `/guide/${token}/statement`)).body);
    const make = () => phoneOf(depot, hire.id, token).statement;
    const none = make()("reply", { about: "mark:none", answer: "accept", text: "" });
    expect(problemsOf(await phone.send(none))[0]?.path).toBe("records.0.content.about");
    const silent = make()("reply", { about: line?.id ?? "", answer: "dispute", text: " " });
    expect(problemsOf(await phone.send(silent))[0]?.path).toBe("records.0.content.text");
  });
});
