import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { CUSTOMER, PARTY } from "../api/samples-for-tests.ts";
import { readDeliveryReport } from "./read-delivery-report.ts";
import { takeBounces } from "./take-bounces.ts";

/** In the form of RFC 3464, appendix; every name invented. */
const report = (messageId: string, action = "failed") =>
  [
    "From: Mail Delivery Subsystem <postmaster@mail.example.org>",
    "To: desk@example.org",
    "Subject: Undelivered",
    "MIME-Version: 1.0",
    "Content-Type: multipart/report; report-type=delivery-status;",
    '\tboundary="part.1"',
    "",
    "--part.1",
    "Content-Type: text/plain",
    "",
    "Your message could not be delivered.",
    "--part.1",
    "Content-Type: message/delivery-status",
    "",
    "Reporting-MTA: dns; mail.example.org",
    "",
    "Final-Recipient: rfc822; nobody@example.org",
    `Action: ${action}`,
    "Status: 5.1.1",
    "Diagnostic-Code: smtp; 550 5.1.1",
    "  no such mailbox here",
    "",
    "--part.1",
    "Content-Type: text/rfc822-headers",
    "",
    `Message-ID: <${messageId}>`,
    "Subject: Your hire",
    "",
    "--part.1--",
    "",
  ].join("\r\n");

describe("a report after RFC 3464", () => {
  it("names the message and says why", () => {
    expect(readDeliveryReport(report("m1@example.org"))).toEqual({
      messageId: "m1@example.org",
      reason: "5.1.1 550 5.1.1 no such mailbox here",
    });
  });

  it("says failed in whatever letters, and stands for the first recipient that failed", () => {
    for (const action of ["Failed", "FAILED"])
      expect(readDeliveryReport(report("m1@example.org", action))?.messageId).toBe("m1@example.org");
    const two = report("m1@example.org", "delivered").replace(
      "Diagnostic-Code: smtp; 550 5.1.1\r\n  no such mailbox here\r\n",
      "\r\nFinal-Recipient: rfc822; other@example.org\r\nAction: failed\r\nStatus: 5.2.2\r\n",
    );
    expect(readDeliveryReport(two)?.reason).toBe("5.2.2");
  });

  it("is no failure where it was delivered or is late, and any other mail is no report", () => {
    for (const action of ["delayed", "delivered", "relayed", "expanded"])
      expect(readDeliveryReport(report("m1@example.org", action))).toBeNull();
    expect(readDeliveryReport("Subject: I am away\r\n\r\nBack on Monday: Action: failed")).toBeNull();
    expect(readDeliveryReport("")).toBeNull();
    expect(readDeliveryReport(report("m1@example.org").replace("Message-ID", "X-Other"))).toBeNull();
  });
});

describe("the folder of what came back", () => {
  let depot: TestDepot;
  let folder = "";
  const put = (name: string, text: string) => writeFileSync(join(folder, "new", name), text);
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    folder = mkdtempSync(join(tmpdir(), "setfair-bounces-"));
    mkdirSync(join(folder, "new"));
  });
  afterAll(async () => {
    await depot.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("marks the message that was sent, once; other mail is moved aside unread, and nothing is deleted", async () => {
    const asked = { customer: CUSTOMER, party: PARTY, from: "2026-07-03T12:15", to: "2026-07-06T10:00" };
    const hireId = (await depot.call("desk", "POST", "/hires", asked)).body.hire.id as string;
    const message = await depot.store.messages.add({
      hireId,
      kind: "booking",
      language: "en",
      to: "nobody@example.org",
      subject: "Your hire",
      body: "…",
      attachments: [],
      dueAt: "2026-07-01T08:00:00.000Z",
      dedupeKey: "once",
      by: "system",
    });
    if (message === null) throw new Error("expected a message");
    await depot.store.messages.move(message.id, ["waiting"], {
      state: "sent",
      sentAt: "2026-07-01T08:00:00.000Z",
    });
    put("1.report", report(`${message.id}@example.org`));
    put("2.other", "Subject: Hello\r\n\r\nNo report at all");
    put("3.unknown", report("018f0000-0000-7000-8000-000000000000@example.org"));
    put("4.again", report(`${message.id}@example.org`));
    expect(await takeBounces(depot.context.database, folder)).toBe(1);
    expect(await depot.store.messages.get(message.id)).toMatchObject({
      state: "bounced",
      reason: "5.1.1 550 5.1.1 no such mailbox here",
    });
    expect(readdirSync(join(folder, "new"))).toEqual([]);
    expect(readdirSync(join(folder, "cur")).sort()).toEqual([
      "1.report:2,S",
      "2.other:2,",
      "3.unknown:2,",
      "4.again:2,",
    ]);
    expect(await takeBounces(depot.context.database, folder)).toBe(0);
  });
});
