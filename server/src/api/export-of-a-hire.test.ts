/** What leaves for one hire holds nothing of another, and a stranger can check it with the command. */
import { spawnSync } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { type LivedHire, liveHire } from "./lived-hire-for-tests.ts";
import { PARTY } from "./samples-for-tests.ts";

const root = join(import.meta.dirname, "../../..");
const OTHER = { name: "Barnaby Elsewhere", telephone: "07700 900222", email: "barnaby@example.org" };
const TELLS = /barnaby|elsewhere|900222|900 222/i;

/** `setfair` as a stranger runs it: from the command line, with nothing but the files. */
function setfair(...args: readonly string[]) {
  const command = ["--conditions=setfair-source", "--import", "tsx", "cli/src/main.ts", ...args];
  const { status, stdout, stderr } = spawnSync(process.execPath, command, { cwd: root, encoding: "utf8" });
  return { status, stdout, stderr };
}

describe("what is exported of one hire", () => {
  let depot: TestDepot;
  let hire: LivedHire;
  let folder = "";
  const otherIds: string[] = [];

  /** Another hirer's hire on the other vehicle: signed, and named in free text. */
  async function other(at: string) {
    depot.at(at);
    const asked = { from: "2026-08-03T12:15", to: "2026-08-06T10:00", vehicleId: "pv2-b" };
    const made = await depot.call("desk", "POST", "/hires", { customer: OTHER, party: PARTY, ...asked });
    const { id } = made.body.hire;
    otherIds.push(id);
    const make = makeDevice(`t-${id}`, `${id}.out`, { hireId: id, vehicleId: "pv2-b" }, depot.context.now);
    const said = make("note", { text: `${OTHER.name} telephoned from ${OTHER.telephone}` });
    const signed = make("signature", {
      purpose: "condition",
      records: [{ id: said.id, hash: said.hash }],
      signer: { name: OTHER.name },
      role: "hirer",
      shown: { text: "Seen", language: "en-GB" },
      strokes: [[{ x: 1, y: 1 }]],
    });
    expect((await depot.call("yard", "POST", "/records", { records: [said, signed] })).status).toBe(200);
  }

  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    folder = await mkdtemp(join(tmpdir(), "setfair-export-"));
    await other("2026-07-01T09:00:00.000Z");
    hire = await liveHire(depot);
    await other("2026-07-06T10:00:00.000Z");
  }, 60_000);
  afterAll(async () => {
    await depot.close();
    await rm(folder, { recursive: true, force: true });
  });

  it("is checked by the command up to the depot's own head, and a change is found", async () => {
    const { body } = await depot.call("desk", "GET", `/hires/${hire.id}/records`);
    const head = (await depot.store.records.head())?.hash ?? "";
    expect(body.records.every(({ refs }: { refs: { hireId: string } }) => refs.hireId === hire.id)).toBe(
      true,
    );
    expect(body.leftOut).toMatchObject({ before: { seq: 2 }, head });
    const text = JSON.stringify(body);
    expect(text).not.toMatch(TELLS);
    for (const id of otherIds) expect(text).not.toContain(id);
    const file = join(folder, "records.json");
    await writeFile(file, text);
    const held = setfair("verify", file, "--head", head);
    expect(held, held.stderr).toMatchObject({ status: 0 });
    expect(held.stdout).toContain("2 receipts belong to records of other hires");
    const [link] = body.leftOut.links;
    await writeFile(file, text.replace(link.recordHash, "0".repeat(64)));
    expect(setfair("verify", file).status).toBe(1);
  }, 90_000);

  it("as a pack holds no file that tells who else hired, and is checked by the command", async () => {
    const answer = await depot.app.inject({
      method: "GET",
      url: `/api/hires/${hire.id}/dispute-pack`,
      headers: { cookie: depot.cookie("desk") },
    });
    const files = unzipSync(answer.rawPayload);
    expect(Object.keys(files).length).toBeGreaterThan(6);
    for (const [name, bytes] of Object.entries(files)) {
      const said = name.endsWith(".pdf")
        ? (await readPdf(bytes)).pages.join(" ")
        : Buffer.from(bytes).toString("latin1");
      expect(TELLS.test(said), name).toBe(false);
      for (const id of otherIds) expect(said.includes(id), name).toBe(false);
      await mkdir(dirname(join(folder, "pack", name)), { recursive: true });
      await writeFile(join(folder, "pack", name), bytes);
    }
    expect(Buffer.from(files["records.json"] ?? []).toString()).toContain("Ingrid Example");
    const head = (await depot.store.records.head())?.hash ?? "";
    const held = setfair("verify", join(folder, "pack"), "--head", head);
    expect(held, held.stderr).toMatchObject({ status: 0 });
    expect(held.stdout).toContain("The hash stands in this chain");
  }, 90_000);
});
