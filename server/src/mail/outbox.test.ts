/** From a hire to the mailbox: written once, sent once, whatever falls over in between. On every store. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { CUSTOMER, PARTY } from "../api/samples-for-tests.ts";
import { LEASE_SECONDS, runDueJobs } from "../jobs/run-jobs.ts";
import { SEND_MESSAGE } from "../store/messages-store.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import type { Mail, MailServer, SendAnswer } from "./mail-server.ts";
import { planMessages } from "./plan-messages.ts";
import { messageSender } from "./send-message.ts";

/** A mail server that answers as told, and keeps what it took. */
function makeServer() {
  const state = {
    answer: { outcome: "taken", response: "250 ok" } as SendAnswer | "dies",
    mails: [] as Mail[],
  };
  const server: MailServer = {
    name: "invented:25",
    async send(mail) {
      if (state.answer === "dies") throw new Error("the process ends here");
      if (state.answer.outcome === "taken") state.mails.push(mail);
      return state.answer;
    },
  };
  return { state, server };
}

describe.each(testedStores())("the outbox on $kind", ({ kind }) => {
  let depot: TestDepot;
  let clock = Date.parse("2026-07-01T08:00:00Z");
  const { state, server } = makeServer();
  const at = (instant: string) => {
    clock = Date.parse(instant);
    depot.at(instant);
  };
  const now = () => new Date(clock);
  const later = (seconds: number) => at(new Date(clock + seconds * 1000).toISOString());
  const run = () =>
    runDueJobs(depot.context.database, {
      [SEND_MESSAGE]: messageSender({ mailServer: server, now, publicUrl: () => "https://hire.example.org" }),
    });
  const outbox = async (query = "") => (await depot.call("desk", "GET", `/messages${query}`)).body;
  const settings = {
    fromName: "Übergabe",
    fromAddress: "desk@example.org",
    replyTo: "",
    automatic: [] as string[],
  };
  let uuid = 0;
  const send = (hireId: string, body: object) =>
    depot.call("desk", "POST", `/hires/${hireId}/messages`, {
      id: `018f0000-0000-7000-8000-${String(++uuid).padStart(12, "0")}`,
      ...body,
    });

  async function bookedHire(name: string, from: string, to: string, email = "ingrid@example.org") {
    const asked = { customer: { ...CUSTOMER, name, email }, party: PARTY, from, to, vehicleId: "pv2" };
    const made = await depot.call("desk", "POST", "/hires", asked);
    const { id } = made.body.hire;
    await depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true });
    expect((await depot.call("desk", "POST", `/hires/${id}/book`)).status).toBe(200);
    return id as string;
  }

  beforeAll(async () => {
    depot = await makeDepot(kind);
    (depot.context as { mailServer?: MailServer }).mailServer = server;
  }, 60_000);
  afterAll(() => depot.close());

  test("nothing goes out by itself until a manager turned it on, and then only what comes after", async () => {
    await bookedHire("Ada Invented", "2026-07-10T14:00", "2026-07-17T10:00");
    expect(await planMessages(depot.store, now(), true)).toBe(0);
    later(60);
    const automatic = ["booking", "preHire", "dayBefore", "returnReminder", "statement"];
    expect((await depot.call("desk", "PUT", "/message-settings", { ...settings, version: 0 })).status).toBe(
      403,
    );
    const put = (version: number) =>
      depot.call("manager", "PUT", "/message-settings", { ...settings, automatic, version });
    expect((await put(0)).body).toMatchObject({ automatic, version: 1, fromAddress: "desk@example.org" });
    expect((await put(0)).status).toBe(409);
    later(60);
    // Ada was booked before: no confirmation; the pack seven days before lies ahead
    expect(await planMessages(depot.store, now(), true)).toBe(0);
    expect((await outbox()).planned).toMatchObject([
      { kind: "preHire", customer: "Ada Invented", dueAt: "2026-07-03T08:00:00.000Z" },
      { kind: "dayBefore", dueAt: "2026-07-09T08:00:00.000Z" },
    ]);
  });

  test("a booking is confirmed once, with the hire's facts and its quote, by however many processes look", async () => {
    const id = await bookedHire("Jürgen Invented", "2026-08-10T14:00", "2026-08-17T10:00");
    const wrote = await Promise.all([1, 2, 3].map(() => planMessages(depot.store, now(), true)));
    expect(wrote.reduce((a, b) => a + b, 0)).toBe(1);
    await Promise.all([run(), run()]);
    await run();
    expect(state.mails).toHaveLength(1);
    const [mail] = state.mails;
    expect(mail).toMatchObject({ to: "ingrid@example.org", from: { name: "Übergabe" }, isAutomatic: true });
    expect(mail?.text).toContain("Dear Jürgen Invented");
    expect(mail?.text).toContain("Mon 10 August 2026 14:00");
    expect(mail?.text).toContain("Still to pay: £");
    expect(mail?.attachments[0]?.content.subarray(0, 5).toString()).toBe("%PDF-");
    const { messages } = await outbox(`?hireId=${id}`);
    expect(messages).toMatchObject([{ state: "sent", kind: "booking", attachments: ["quote"], by: null }]);
    state.mails.length = 0;
  });

  test("the link to the guide is made when the message goes, opens the guide, and is kept nowhere", async () => {
    at("2026-07-03T08:00:30.000Z");
    expect(await planMessages(depot.store, now(), true)).toBe(1);
    await run();
    const [mail] = state.mails.splice(0);
    const token = /https:\/\/hire\.example\.org\/g\/(\S+)/.exec(mail?.text ?? "")?.[1] ?? "";
    expect((await depot.call(null, "GET", `/guide/${token}`)).body.customer).toBe("Ada Invented");
    const { messages } = await outbox();
    expect(messages[0]).toMatchObject({ kind: "preHire", state: "sent" });
    expect(messages[0].body).not.toContain(token);
    expect(messages[0].body).toContain("made when this is sent");
  });

  test("a mail server that is down is tried again, longer apart each time, for days, and nothing is lost", async () => {
    const id = await bookedHire("Bo Invented", "2026-09-10T14:00", "2026-09-17T10:00");
    const { body } = await send(id, { kind: "booking" });
    state.answer = { outcome: "later", reason: "connect ECONNREFUSED" };
    let rounds = 0;
    for (; rounds < 12; rounds++) {
      await run();
      later(2 * 3600);
    }
    expect(await depot.store.messages.get(body.id)).toMatchObject({
      state: "waiting",
      reason: "connect ECONNREFUSED",
    });
    state.answer = { outcome: "taken", response: "250 at last" };
    later(6 * 3600);
    await run();
    expect(await depot.store.messages.get(body.id)).toMatchObject({ state: "sent", response: "250 at last" });
    expect(state.mails.splice(0).filter(({ messageId }) => messageId.startsWith(body.id))).toHaveLength(1);
  });

  test("after three days it is given up, seen, and can be tried again by a person", async () => {
    const id = await bookedHire("Cleo Invented", "2026-10-10T14:00", "2026-10-17T10:00");
    const { body } = await send(id, { kind: "booking" });
    state.answer = { outcome: "later", reason: "greeting never received" };
    for (let n = 0; n < 22; n++) {
      await run();
      later(4 * 3600);
    }
    expect((await outbox(`?show=open&hireId=${id}`)).messages.at(-1)).toMatchObject({
      state: "failed",
      reasonCode: "givenUp",
    });
    state.answer = { outcome: "taken", response: "250 ok" };
    expect((await depot.call("desk", "POST", `/messages/${body.id}/again`)).body.state).toBe("waiting");
    await run();
    expect((await depot.store.messages.get(body.id))?.state).toBe("sent");
    expect((await depot.call("desk", "POST", `/messages/${body.id}/again`)).status).toBe(409);
    const why = "550 mailbox unknown";
    const bounced = await depot.call("desk", "POST", `/messages/${body.id}/bounced`, { why });
    expect(bounced.body).toMatchObject({ state: "bounced", reason: why });
    state.mails.length = 0;
  });

  test("a process stopped in the middle of sending leaves it unsure, and no other process sends it again", async () => {
    const id = await bookedHire("Dee Invented", "2026-11-10T14:00", "2026-11-17T10:00");
    const { body } = await send(id, { kind: "booking" });
    state.answer = "dies";
    await run();
    state.answer = { outcome: "taken", response: "250 ok" };
    later(LEASE_SECONDS + 60);
    await run();
    await run();
    expect((await depot.store.messages.get(body.id))?.state).toBe("unsure");
    expect(state.mails.filter(({ messageId }) => messageId.startsWith(body.id))).toEqual([]);
  });

  test("pressed twice it is one message; a draft language goes only where a person read it; a stage that does not fit is refused", async () => {
    const id = await bookedHire("Eve Invented", "2026-12-10T14:00", "2026-12-17T10:00");
    const press = { id: "018f0000-0000-7000-8000-00000000ffff", kind: "booking", language: "de" };
    const path = `/hires/${id}/messages`;
    expect(await depot.call("desk", "POST", path, press)).toMatchObject({
      status: 409,
      body: { error: { code: "missing", problems: [{ path: "draftRead" }] } },
    });
    const first = await depot.call("desk", "POST", path, { ...press, draftRead: true });
    const second = await depot.call("desk", "POST", path, { ...press, draftRead: true });
    expect([first.status, second.body.id]).toEqual([200, first.body.id]);
    expect(first.body.body).toMatch(/^Guten Tag Eve Invented/);
    expect(await send(id, { kind: "statement" })).toMatchObject({
      status: 409,
      body: { error: { problems: [{ path: "stage" }] } },
    });
    const preview = (await depot.call("desk", "GET", `/hires/${id}/message?kind=dayBefore&language=fr`)).body;
    expect(preview).toMatchObject({ isDraft: true, moment: "2026-12-09T09:00:00.000Z", attachments: [] });
    const moment = await send(id, { kind: "dayBefore", when: "moment" });
    expect(moment.body).toMatchObject({ state: "waiting", dueAt: "2026-12-09T09:00:00.000Z" });
    const gone = await depot.call("desk", "POST", `/messages/${moment.body.id}/withdraw`);
    expect(gone.body.state).toBe("withdrawn");
    at("2026-12-09T09:01:00.000Z");
    await run();
    expect((await depot.store.messages.get(moment.body.id))?.state).toBe("withdrawn");
    state.mails.length = 0;
  });

  test("what would come too late to be of use is not sent, and says so", async () => {
    const id = await bookedHire("Ina Invented", "2027-03-10T14:00", "2027-03-17T10:00");
    const { body } = await send(id, { kind: "dayBefore", when: "moment" });
    expect(body).toMatchObject({ state: "waiting", dueAt: "2027-03-09T09:00:00.000Z" });
    const before = clock;
    // the mail server was down for a day: the keys go now
    at("2027-03-10T14:00:00.000Z");
    await run();
    expect(await depot.store.messages.get(body.id)).toMatchObject({ state: "failed", reason: "#tooLate" });
    expect(state.mails.splice(0)).toEqual([]);
    at(new Date(before).toISOString());
  });

  test("an address that is none is refused by its name at the hire and at the sender; erased is erased here too", async () => {
    const id = await bookedHire("Flo Invented", "2027-01-10T14:00", "2027-01-17T10:00", "flo@example.org");
    const { body } = await send(id, { kind: "booking", when: "now" });
    const hire = await depot.store.hires.get(id);
    await depot.store.customers.erase(hire?.customerId ?? "", "test");
    expect(await depot.store.messages.get(body.id)).toMatchObject({ state: "withdrawn", to: "", body: "" });
    expect((await send(id, { kind: "booking" })).body.error.problems[0].path).toBe("customer.email");
    for (const [field, value] of [
      ["fromAddress", "desk@example.org\r\nBcc: x@example.org"],
      ["replyTo", "not an address"],
      ["fromName", "Desk\nBcc: all@example.org"],
    ] as const) {
      const spoilt = { ...settings, [field]: value, version: 1 };
      expect(await depot.call("manager", "PUT", "/message-settings", spoilt)).toMatchObject({
        status: 400,
        body: { error: { problems: [{ path: field }] } },
      });
    }
  });

  test("without a mail server messages wait, can be read, and go once there is one", async () => {
    (depot.context as { mailServer?: MailServer | null }).mailServer = null;
    const id = await bookedHire("Gus Invented", "2027-02-10T14:00", "2027-02-17T10:00");
    const { body } = await send(id, { kind: "booking" });
    await planMessages(depot.store, now(), false);
    await run();
    expect((await outbox()).mailServer).toBeNull();
    expect((await outbox(`?hireId=${id}`)).messages.at(-1)).toMatchObject({ state: "waiting" });
    await planMessages(depot.store, now(), true);
    await run();
    expect((await depot.store.messages.get(body.id))?.state).toBe("sent");
  });
});
