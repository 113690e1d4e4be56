import { createHash, randomBytes } from "node:crypto";
import { mkdir, symlink } from "node:fs/promises";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openFiles } from "../files/open-files.ts";
import { makeDepot, makeDevice, type TestDepot } from "./depot-for-tests.ts";
import { refusalOf } from "./error-answer.ts";

const CUSTOMER = { name: "Example", telephone: "07700 900000", email: "e@example.org" };
const PARTY = { travellers: [{ id: "t1", kind: "adult" }], dogs: 0, experience: "first" };
const ENQUIRY = { customer: CUSTOMER, party: PARTY, from: "2026-08-01T12:00", to: "2026-08-08T10:00" };
const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const smallJpeg = () =>
  sharp(randomBytes(60 * 40 * 3), { raw: { width: 60, height: 40, channels: 3 } })
    .jpeg()
    .toBuffer();

/** A JPEG whose head says that it is so many pixels wide and high, as a bomb for decoders does. */
function claiming(jpeg: Buffer, widthPx: number, heightPx: number): Buffer {
  const bomb = Buffer.from(jpeg);
  const frame = bomb.indexOf(Buffer.from([0xff, 0xc0]));
  bomb.writeUInt16BE(heightPx, frame + 5);
  bomb.writeUInt16BE(widthPx, frame + 7);
  return bomb;
}

describe("evidence that cannot be taken is answered clearly, and nothing is lost", () => {
  let depot: TestDepot;
  let hireId = "";
  let url = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    hireId = (await depot.call("desk", "POST", "/hires", { ...ENQUIRY, vehicleId: "pv2" })).body.hire.id;
    await depot.app.listen({ port: 0, host: "127.0.0.1" });
    url = `http://127.0.0.1:${(depot.app.server.address() as AddressInfo).port}`;
  });
  afterAll(() => depot.close());

  const put = async (bytes: Uint8Array, sha256 = hashOf(bytes)) => {
    const answer = await fetch(`${url}/api/photos/${sha256}`, {
      method: "PUT",
      headers: { cookie: depot.cookie("yard"), "content-type": "image/jpeg" },
      body: new Uint8Array(bytes),
    });
    return { status: answer.status, body: await answer.json() };
  };
  const device = (id: string, refs = { hireId, vehicleId: "pv2" }) =>
    makeDevice(id, `${hireId}.back`, refs, depot.context.now);

  it("a photograph of 60 MB is refused with the most that is taken, and the next one is kept", async () => {
    const { status, body } = await put(Buffer.alloc(60_000_000, 7));
    expect([status, body.error.code]).toEqual([413, "tooLarge"]);
    expect(body.error.problems).toEqual([{ path: "body", expected: "at most 25 MB" }]);
    expect((await put(await smallJpeg())).status).toBe(200);
  });

  it("text under the name of a picture, and a picture that claims four thousand million pixels, are not kept", async () => {
    expect((await put(Buffer.from("this is text"))).body.error.code).toBe("notAPhotograph");
    const bomb = claiming(await smallJpeg(), 65_000, 65_000);
    const { status, body } = await put(bomb);
    expect([status, body.error.code]).toEqual([400, "notAPhotograph"]);
    expect(body.error.problems[0].expected).toBe("expected a JPEG photograph");
    expect(await depot.context.files.status(depot.scope, hashOf(bomb))).toEqual({
      state: "absent",
      received: 0,
    });
  });

  it("the same upload and the same records again change nothing", async () => {
    const jpeg = await smallJpeg();
    expect((await put(jpeg)).body).toMatchObject({ state: "kept", again: false });
    expect((await put(jpeg)).body).toMatchObject({ state: "kept", again: true });
    const record = device("replayed")("note", { text: "seen" });
    const send = () => depot.call("yard", "POST", "/records", { records: [record] });
    const first = await send();
    const second = await send();
    expect([first.body.added, second.body.added]).toEqual([1, 0]);
    expect(second.body.receipts[0].receipt).toEqual(first.body.receipts[0].receipt);
    const kept = await depot.store.records.list({ hireId });
    expect(kept.filter(({ record: { id } }) => id === record.id)).toHaveLength(1);
  });

  it("a record of another vehicle is refused and named", async () => {
    const record = device("elsewhere", { hireId, vehicleId: "pv2-b" })("note", { text: "seen" });
    const { status, body } = await depot.call("yard", "POST", "/records", { records: [record] });
    expect(status).toBe(400);
    expect(body.error.problems).toEqual([
      { path: "records.0.refs.vehicleId", expected: "expected the vehicle of that hire" },
    ]);
  });

  it("a record from a clock two days fast is kept with both times", async () => {
    const wrong = new Date(depot.context.now().getTime() + 2 * 86_400_000);
    const make = makeDevice("fast", `${hireId}.back`, { hireId, vehicleId: "pv2" }, () => wrong);
    const record = make("note", { text: "seen", direction: "back" });
    expect((await depot.call("yard", "POST", "/records", { records: [record] })).status).toBe(200);
    const kept = await depot.store.records.get(record.id);
    expect([kept?.record.deviceTime, kept?.receipt.at]).toEqual([
      wrong.toISOString(),
      depot.context.now().toISOString(),
    ]);
  });

  it("a full disk is said so, keeps what was there, and takes the photograph once there is room", async () => {
    const folder = join(tmpdir(), `setfair-full-${randomBytes(6).toString("hex")}`);
    const files = openFiles({ dataFolder: folder });
    const jpeg = await smallJpeg();
    const incoming = join(folder, "photographs", depot.scope.firmId, depot.scope.depotId, "incoming");
    await mkdir(incoming, { recursive: true });
    // what is written here finds no room
    await symlink("/dev/full", join(incoming, `${hashOf(jpeg)}.part`));
    async function* body() {
      yield jpeg;
    }
    const sent = { scope: depot.scope, sha256: hashOf(jpeg), from: 0, total: jpeg.length, body: body() };
    const error = await files.put(sent).catch((thrown: unknown) => thrown);
    expect(refusalOf(error)).toMatchObject({ code: "noRoom", status: 507 });
    await files.remove(depot.scope, hashOf(jpeg));
    expect(await files.put({ ...sent, body: body() })).toMatchObject({ state: "kept", again: false });
  });

  it("a full database is said so, and none of the batch is half there", async () => {
    const full = Object.assign(new Error("database or disk is full"), { code: "SQLITE_FULL" });
    expect(refusalOf(full)).toMatchObject({ code: "noRoom", status: 507 });
  });
});
