import { createHash } from "node:crypto";
import { type Receipt, verifyHead, verifyRecords } from "@setfair/records";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { type LivedHire, liveHire } from "../api/lived-hire-for-tests.ts";
import { readPdf } from "./read-pdf-for-tests.ts";

describe("the papers of evidence", () => {
  let depot: TestDepot;
  let hire: LivedHire;
  const get = (path: string, as: "desk" | "yard" | null = "desk") =>
    depot.app.inject({
      method: "GET",
      url: `/api${path}`,
      ...(as === null ? {} : { headers: { cookie: depot.cookie(as) } }),
    });
  const paper = async (path: string, as: "desk" | null = "desk") => {
    const answer = await get(path, as);
    expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
    return { ...(await readPdf(answer.rawPayload)), bytes: answer.rawPayload };
  };
  const textOf = ({ pages }: { pages: string[] }) => pages.join("\n").replaceAll(/\s+/g, " ");
  const must = async (...args: Parameters<TestDepot["call"]>) => {
    const answer = await depot.call(...args);
    expect(answer, JSON.stringify(answer.body)).toMatchObject({ status: 200 });
    return answer.body;
  };
  const decide = async () => {
    const { differences } = await must("desk", "GET", `/hires/${hire.id}/differences`);
    const [mark] = differences.filter(({ kind }: { kind: string }) => kind === "mark");
    const classes = [{ id: mark.id, class: "hirer", reason: "Not there when both signed." }];
    await must("desk", "PUT", `/hires/${hire.id}/classes`, { classes });
  };
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    hire = await liveHire(depot);
    await decide();
  }, 60_000);
  afterAll(() => depot.close());

  it("the condition record holds marks, readings, kit, signatures, both clocks, its hash and the head", async () => {
    const read = await paper(`/hires/${hire.id}/papers/condition`);
    const text = textOf(read);
    for (const said of ["As it left", "As it came back", "Scratch", "60 mm", "Readings", "Kit, counted"])
      expect(text).toContain(said);
    expect(text).toMatch(/by the device, .* at the depot/);
    expect(text).toContain("Ingrid Example (hirer)");
    const head = (await depot.store.records.head()) as Receipt;
    const joined = text.replaceAll(" ", "");
    expect(joined).toContain(head.hash);
    const signed = hire.records.back.filter(({ kind }) => kind === "signature");
    for (const { hash } of signed) expect(joined).toContain(hash);
    expect(read.bytes.length).toBeGreaterThan(20_000);
  });

  it("a printed head is found in the records, and a head of other records is not", async () => {
    const all = await depot.store.records.export();
    const head = (await depot.store.records.head()) as Receipt;
    expect(verifyHead(all, head.hash).ok).toBe(true);
    expect(verifyHead(all, hire.records.out[0]?.hash ?? "").ok).toBe(true);
    expect(verifyHead(all, "0".repeat(64)).ok).toBe(false);
  });

  it("a correction is a new record with who and why; the first stays beside it on paper", async () => {
    const reading = hire.records.back.find(({ kind }) => kind === "reading");
    const body = {
      recordId: reading?.id,
      instead: { value: 13 },
      why: "Misread in the rain; see the photograph.",
    };
    expect(
      (await depot.call("desk", "POST", `/hires/${hire.id}/corrections`, { ...body, instead: { found: 1 } }))
        .body.error.problems[0].path,
    ).toBe("instead.found");
    expect((await depot.call("yard", "POST", `/hires/${hire.id}/corrections`, body)).status).toBe(403);
    const before = (await depot.store.records.export()).records.length;
    await must("desk", "POST", `/hires/${hire.id}/corrections`, body);
    const all = await depot.store.records.export();
    expect(all.records).toHaveLength(before + 1);
    expect(verifyRecords(all).ok).toBe(true);
    const text = textOf(await paper(`/hires/${hire.id}/papers/condition`));
    expect(text).toContain("Dee Desk");
    expect(text).toContain("Misread in the rain");
  });

  it("the dispute paper shows what is disputed with both sides of its evidence, and every record", async () => {
    await must("desk", "POST", `/hires/${hire.id}/settlement`);
    const { token } = await must("desk", "POST", `/hires/${hire.id}/hirer-link`);
    const { result } = await must(null, "GET", `/guide/${token}/statement`);
    const line = result.lines.find(({ code }: { code: string }) => code === "damage");
    const reply = { lineId: line.id, answer: "dispute", text: "It was there before." };
    await must(null, "POST", `/guide/${token}/statement`, reply);
    const read = await paper(`/hires/${hire.id}/papers/dispute`);
    const text = textOf(read);
    for (const said of [
      "What is disputed",
      "It was there before.",
      "Not there when both signed.",
      "How this side left",
      "How it came back",
      "I have seen the vehicle (agreement).",
      "Every record in order of arrival",
    ])
      expect(text).toContain(said);
    const statement = textOf(await paper(`/guide/${token}/papers/statement`, null));
    expect(statement).toContain("It was there before.");
    const kept = (await depot.store.frozen.ofHire(hire.id)).find(({ room }) => room === "settlement");
    expect(statement.replaceAll(" ", "")).toContain(kept?.hash);
    // the hirer's copy by the link, and nothing that is not theirs
    expect(textOf(await paper(`/guide/${token}/papers/condition`, null))).toContain(
      "What makes this copy a proof",
    );
    expect((await get(`/guide/${token}/papers/dispute`, null)).statusCode).toBe(400);
  });

  it("the dispute pack holds originals, records and receipts that verify, and a list of all", async () => {
    expect((await get(`/hires/${hire.id}/dispute-pack`, "yard")).statusCode).toBe(403);
    const answer = await get(`/hires/${hire.id}/dispute-pack`);
    expect(answer.headers["content-type"]).toBe("application/zip");
    const files = unzipSync(answer.rawPayload);
    const json = (name: string) => JSON.parse(Buffer.from(files[name] ?? []).toString());
    const hash = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
    expect(verifyRecords(json("records.json"))).toMatchObject({ ok: true });
    const manifest = json("manifest.json");
    expect(manifest.head).toBe((await depot.store.records.head())?.hash);
    expect(Object.keys(files).sort()).toEqual(
      [...manifest.files.map(({ path }: { path: string }) => path), "manifest.json"].sort(),
    );
    for (const { path, sha256 } of manifest.files) expect(hash(files[path] as Uint8Array), path).toBe(sha256);
    for (const taken of Object.values(hire.photographs))
      expect(hash(files[`photographs/${taken}.jpg`] as Uint8Array)).toBe(taken);
    const readme = Buffer.from(files["README.txt"] ?? []).toString();
    expect(readme).toContain(manifest.head);
    expect(readme).toContain("setfair verify");
    expect((await readPdf(files["dispute.pdf"] as Uint8Array)).tagged).toBe(true);
  });

  it("the slip for what was left behind says what, where, what became of it and what it cost", async () => {
    expect((await get(`/hires/${hire.id}/papers/lostProperty`)).statusCode).toBe(409);
    const lost = { what: "A blue coat", where: "wardrobe", now: "posted", costPence: 640, note: "by post" };
    await must("desk", "POST", `/hires/${hire.id}/lost-property`, lost);
    const text = textOf(await paper(`/hires/${hire.id}/papers/lostProperty`));
    for (const said of ["A blue coat", "wardrobe", "posted", "£6.40"]) expect(text).toContain(said);
  });
});
