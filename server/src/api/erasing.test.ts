/** A person is erased: what goes at once, what waits, what a restore brings back. On a disk and in a store. */
import { createHash } from "node:crypto";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { RULES } from "@setfair/engine";
import { verifyRecords } from "@setfair/records";
import SqliteDatabase from "better-sqlite3";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeBackup } from "../backup/make-backup.ts";
import { restoreBackup } from "../backup/restore-backup.ts";
import { toJson } from "../desk/documents.ts";
import { openFiles } from "../files/open-files.ts";
import { startStore, type TestStore } from "../files/store-for-tests.ts";
import type { PhotographFiles } from "../files/types.ts";
import { storeJobs } from "../jobs/handlers.ts";
import { photographRemover } from "../jobs/remove-photographs.ts";
import { runDueJobs } from "../jobs/run-jobs.ts";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { openDatabase } from "../store/open-database.ts";
import { REMOVE_PHOTOGRAPHS } from "../store/remove-photographs.ts";
import type { Erasure } from "../store/types.ts";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { type LivedHire, liveHire, makeJpeg, sendPhotograph, settleSums } from "./lived-hire-for-tests.ts";
import { CUSTOMER } from "./samples-for-tests.ts";

const PERSON = /ingrid|900101/i;
const hashOf = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

/** Every row of every table that tells who the person was, by the name of its table. */
function rowsNaming(dataFolder: string, who: RegExp): string[] {
  const db = new SqliteDatabase(join(dataFolder, "setfair.sqlite"), { readonly: true });
  const tables = db.prepare("select name from sqlite_master where type = 'table'").all() as {
    name: string;
  }[];
  const found = tables.flatMap(({ name }) =>
    db
      .prepare(`select * from "${name}"`)
      .all()
      .filter((row) => who.test(JSON.stringify(row)))
      .map(() => name),
  );
  db.close();
  return found;
}

describe.each(["a folder", "a store"] as const)("an erased person, with photographs in %s", (where) => {
  let depot: TestDepot;
  let store: TestStore | null = null;
  let files: PhotographFiles;
  let hire: LivedHire;
  let folder = "";
  let sheet: Buffer;
  let unnamed: Buffer;
  const bucket = () => store?.access ?? null;
  const run = () =>
    runDueJobs(depot.context.database, {
      ...storeJobs,
      [REMOVE_PHOTOGRAPHS]: photographRemover({ files, now: depot.context.now }),
    });
  const stateOf = async (hash: string, of = files) => (await of.status(depot.scope, hash)).state;
  const photo = (hash: string) => depot.call("desk", "GET", `/photos/${hash}?size=small`);
  const shownFirst = (hash: string) =>
    depot.app.inject({
      method: "GET",
      url: `/api/photos/${hash}?size=small`,
      headers: { cookie: depot.cookie("desk") },
    });

  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    folder = await mkdtemp(join(tmpdir(), "setfair-erasing-"));
    store = where === "a store" ? await startStore() : null;
    files = openFiles({ dataFolder: depot.dataFolder, bucket: bucket() });
    (depot.context as { files: PhotographFiles }).files = files;
    [sheet, unnamed] = await Promise.all([makeJpeg(300, 200), makeJpeg(200, 100)]);
    hire = await liveHire(depot, {
      also: (make, direction) =>
        direction === "back"
          ? [make("photograph", { about: "sheet", sha256: hashOf(sheet), direction })]
          : [make("note", { about: "seats", text: "Ingrid Example has a bad back" })],
    });
    for (const jpeg of [sheet, unnamed]) await sendPhotograph(depot, hire.id, jpeg);
    // a smaller picture is made of each, and has to go too
    for (const hash of [hashOf(sheet), hire.photographs.back])
      expect((await shownFirst(hash)).statusCode).toBe(200);
    const { differences } = (await depot.call("desk", "GET", `/hires/${hire.id}/differences`)).body;
    const classes = differences.map(({ id }: { id: string }) => ({ id, class: "hirer", reason: "new" }));
    await depot.call("desk", "PUT", `/hires/${hire.id}/classes`, { classes });
    expect((await depot.call("desk", "POST", `/hires/${hire.id}/settlement`)).status).toBe(200);
    await settleSums(depot, hire.id);
    const row = await depot.store.hires.get(hire.id);
    await depot.store.hires.update(hire.id, { stage: "closed" }, row?.version ?? 0);
    await makeBackup({
      dataFolder: depot.dataFolder,
      into: join(folder, "b"),
      now: new Date(),
      bucket: bucket(),
    });
  }, 60_000);
  afterAll(async () => {
    await depot.close();
    await store?.close();
    await rm(folder, { recursive: true, force: true });
  });

  it("stands in no row any more; the chain holds with the same head, and the hire can still be read", async () => {
    expect(rowsNaming(depot.dataFolder, PERSON)).not.toEqual([]);
    const before = await depot.store.records.head();
    const answer = await depot.call("manager", "POST", `/hires/${hire.id}/customer/erasure`);
    expect(answer).toMatchObject({ status: 200 });
    await run();
    expect(rowsNaming(depot.dataFolder, PERSON)).toEqual([]);
    for (const file of ["setfair.sqlite", "setfair.sqlite-wal"])
      expect(PERSON.test((await readFile(join(depot.dataFolder, file))).toString("latin1")), file).toBe(
        false,
      );
    const verified = verifyRecords(await depot.store.records.export());
    expect(verified).toMatchObject({ ok: true, head: before?.hash });
    expect(verified.erased).toBeGreaterThan(3);
    const page = await depot.call("desk", "GET", `/hires/${hire.id}`);
    expect(page.body.hire).toMatchObject({ customer: "(erased)", stage: "closed" });
  });

  it("leaves no signed sheet and no photograph that nothing names, and says when and why", async () => {
    for (const hash of [hashOf(sheet), hashOf(unnamed)]) {
      expect(await stateOf(hash)).toBe("absent");
      expect(await photo(hash)).toMatchObject({
        status: 410,
        body: {
          error: {
            code: "photographRemoved",
            problems: [
              { path: "sha256", expected: "Removed on Mon 6 July 2026 under the erasure of a person." },
            ],
          },
        },
      });
    }
  });

  it("keeps what shows the vehicle, and lists in the pack what was removed", async () => {
    expect(await stateOf(hire.photographs.out)).toBe("kept");
    expect(await stateOf(hire.photographs.back)).toBe("kept");
    const { rawPayload } = await depot.app.inject({
      method: "GET",
      url: `/api/hires/${hire.id}/dispute-pack`,
      headers: { cookie: depot.cookie("desk") },
    });
    const pack = unzipSync(rawPayload);
    for (const [name, bytes] of Object.entries(pack))
      expect(PERSON.test(Buffer.from(bytes).toString("latin1")), name).toBe(false);
    const manifest = JSON.parse(Buffer.from(pack["manifest.json"] ?? []).toString());
    expect(manifest.photographsRemoved).toMatchObject([{ sha256: hashOf(sheet), under: "erasure" }]);
    const paper = (await readPdf(pack["dispute.pdf"] as Uint8Array)).pages.join(" ");
    expect(paper).not.toMatch(PERSON);
  });

  it("is not brought back by a device that sends late: neither the photograph nor what they signed", async () => {
    expect(await sendPhotograph(depot, hire.id, sheet)).toBe(hashOf(sheet));
    expect(await stateOf(hashOf(sheet))).toBe("absent");
    const late = makeDevice("tablet-late", `${hire.id}.late`, { hireId: hire.id }, depot.context.now);
    const onPaper = { sha256: hashOf(await makeJpeg()), at: "2026-07-06T10:00" };
    const signed = late("signature", {
      purpose: "condition",
      records: [],
      signer: { name: CUSTOMER.name },
      role: "hirer",
      shown: { text: "Seen", language: "en-GB" },
      strokes: [],
      onPaper,
    });
    expect((await depot.call("yard", "POST", "/records", { records: [signed] })).status).toBe(200);
    expect(rowsNaming(depot.dataFolder, PERSON)).toEqual([]);
    expect(await photo(onPaper.sha256)).toMatchObject({ status: 410 });
    expect(verifyRecords(await depot.store.records.export()).ok).toBe(true);
  });

  it("stays erased in a folder that is restored from a backup of before", async () => {
    const list = await readFile(join(depot.dataFolder, "erasures.jsonl"), "utf8");
    const erasures = list
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Erasure);
    const into = join(folder, "restored");
    const elsewhere = store === null ? null : { ...store.access, prefix: "restored/" };
    const key = await readFile(join(depot.dataFolder, "setfair.key"), "utf8");
    const answer = await restoreBackup({
      from: join(folder, "b"),
      dataFolder: into,
      erasures,
      key,
      withoutKey: false,
      bucket: elsewhere,
    });
    expect(answer).toMatchObject({ ok: true, leftOut: 2 });
    expect(rowsNaming(into, PERSON)).toEqual([]);
    const restored = openFiles({ dataFolder: into, bucket: elsewhere });
    expect(await stateOf(hashOf(sheet), restored)).toBe("absent");
    expect(await stateOf(hire.photographs.back, restored)).toBe("kept");
    const database = await openDatabase({ dataFolder: into });
    const kept = await database.storeFor(depot.scope).photographs.get(hashOf(sheet));
    await database.close();
    expect(kept?.removed).toEqual({ at: erasures.at(-1)?.at, under: "erasure" });
  });

  it("leaves no photograph of the vehicle either once the time is over, whatever the store does meanwhile", async () => {
    depot.at("2032-07-06T08:00:00.000Z");
    await run();
    expect(await stateOf(hire.photographs.back)).toBe("kept");
    depot.at("2032-07-07T10:00:00.000Z");
    store?.failNext("DELETE", 403);
    expect((await run()).failed).toBe(store === null ? 0 : 1);
    depot.at("2032-07-08T10:00:00.000Z");
    await run();
    expect(await stateOf(hire.photographs.back)).toBe("absent");
    expect(await stateOf(hire.photographs.out)).toBe("absent");
    const left: string[] = [];
    for await (const { sha256 } of files.each()) left.push(sha256);
    expect(left).toEqual([]);
    expect((await depot.store.photographs.get(hire.photographs.back))?.removed).toEqual({
      at: "2032-07-07T10:00:00.000Z",
      under: "retention",
    });
    expect(verifyRecords(await depot.store.records.export()).ok).toBe(true);
  });
});

describe("the time for which photographs stay", () => {
  it("is the depot's own where it entered one", async () => {
    const depot = await makeDepot("sqlite");
    const hire = await liveHire(depot);
    const row = await depot.store.hires.get(hire.id);
    await depot.store.hires.update(hire.id, { stage: "closed" }, row?.version ?? 0);
    const shipped = RULES.find(({ id }) => id === "settlement.photographsKeptYears");
    const rule = { ...shipped, value: 0.5, validFrom: "2026-01-01", source: "Our own advice" };
    await depot.store.rules.add({
      ruleId: rule.id ?? "",
      kind: "correct",
      document: toJson({ rule }),
      by: "manager",
    });
    await depot.store.customers.erase(row?.customerId ?? "", "manager");
    const run = () =>
      runDueJobs(depot.context.database, {
        ...storeJobs,
        [REMOVE_PHOTOGRAPHS]: photographRemover({ files: depot.context.files, now: depot.context.now }),
      });
    const removed = () => depot.store.photographs.removed();
    await run();
    expect(await removed()).toEqual([]);
    depot.at("2027-01-06T08:00:00.000Z");
    await run();
    expect(await removed()).toEqual([]);
    depot.at("2027-01-07T10:00:00.000Z");
    await run();
    expect(await removed()).toEqual([hire.photographs.out, hire.photographs.back].sort());
    await depot.close();
  });
});
