import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { InvoiceDocument } from "../money/invoices.ts";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";
import {
  type Asked,
  cost,
  decide,
  must,
  note,
  path,
  problem,
  STORES,
  tornAwning,
} from "./settlement-for-tests.ts";

// What is held while its cost is not known, and what hirer and desk say of a line.

describe.each(STORES)("what is disputed, held and answered, on $kind", ({ kind }) => {
  let asked: Asked;
  let token = "";
  beforeAll(async () => {
    asked = await tornAwning(true, kind);
    await decide(asked);
    token = (await must(asked.depot.call("desk", "POST", `/hires/${asked.id}/hirer-link`))).token;
  });
  afterAll(() => asked.depot.close());

  const say = (answer: "accept" | "dispute", text: string) =>
    asked.depot.call(null, "POST", `/guide/${token}/statement`, { lineId: asked.mark, answer, text });
  const reply = (answer: "reply" | "withdraw", text: string, lineId = asked.mark) =>
    asked.depot.call("desk", "POST", path(asked, "/replies"), { lineId, answer, text });

  it("holds a stated sum while the cost is not known, and charges nothing of it", async () => {
    const awaiting = {
      kind: "awaiting",
      differenceId: asked.mark,
      mostPence: 40_000,
      reason: "Estimate asked for",
    };
    expect(await problem(note(asked, { ...awaiting, differenceId: "mark:none" }))).toEqual([
      400,
      "differenceId",
    ]);
    const state = await must(note(asked, awaiting));
    expect(state).toMatchObject({ total: { pence: 0 }, result: { depositWithheld: { pence: 40_000 } } });
    await must(asked.depot.call("desk", "POST", path(asked)));
  });

  it("gives nothing back without a promised day, then all but what is held, and reminds of the day", async () => {
    const { depot, id } = asked;
    const release = () => depot.call("desk", "POST", `/hires/${id}/deposit-release`);
    expect(await problem(release())).toEqual([409, "promisedOn"]);
    const hold = (promisedOn: string) =>
      depot.call("desk", "POST", path(asked, "/hold"), { promisedOn, reason: "Workshop has not answered" });
    expect(await problem(hold("2026-07-05"))).toEqual([400, "promisedOn"]);
    expect((await must(hold("2026-07-10"))).promisedOn).toBe("2026-07-10");
    const page = await must(release());
    expect(page.money.depositHeld.pence).toBe(40_000);
    expect(page.waits).toMatchObject([{ code: "answerHeld", facts: { promisedOn: "2026-07-10" } }]);
    expect((await must(depot.call("desk", "GET", `/hires/${id}/notes`))).notes).toMatchObject([
      { kind: "promise", on: "2026-07-10", text: expect.stringContaining("Workshop has not answered") },
    ]);
    expect(await problem(depot.call("desk", "POST", `/hires/${id}/close`))).toEqual([409, "deposit"]);
    depot.at("2026-07-11T08:00:00.000Z");
    expect((await must(depot.call("desk", "GET", `/hires/${id}`))).waits[0].code).toBe("answerLate");
  });

  it("keeps every word of hirer and desk on a line, and the charge once it is taken back stays at nothing", async () => {
    const { depot, id } = asked;
    const invoiced = await cost(asked, "invoice", 0, 25_000);
    expect(invoiced.total.pence).toBe(25_000);
    expect((await must(say("dispute", "The wind tore it while we slept."))).result.disputed.pence).toBe(
      25_000,
    );
    await must(reply("reply", "The handover says: in at night. Signed by you."));
    expect(await problem(reply("reply", "…", "no such line"))).toEqual([400, "lineId"]);
    const withdrawn = await must(reply("withdraw", "As goodwill."));
    expect(withdrawn).toMatchObject({ total: { pence: 0 }, toGiveBack: { pence: 40_000 } });
    const kinds = withdrawn.entries.map(({ kind, by }: { kind: string; by: string | null }) => [kind, by]);
    expect(kinds.slice(-3)).toEqual([
      ["dispute", null],
      ["reply", "Dee Desk"],
      ["withdraw", "Dee Desk"],
    ]);
    const page = await must(depot.call("desk", "POST", `/hires/${id}/deposit-release`));
    expect(page.money).toMatchObject({ depositHeld: { pence: 0 }, owed: { pence: 0 } });
    expect(await depot.call("desk", "POST", `/hires/${id}/deposit-release`)).toMatchObject({ status: 409 });
  });

  it("writes lost property down with what became of it", async () => {
    const { depot, id } = asked;
    const lost = { what: "Child's rucksack", where: "Overcab bed", now: "kept", costPence: 0, note: "" };
    const send = (body: object) => depot.call("desk", "POST", `/hires/${id}/lost-property`, body);
    expect(await problem(send({ ...lost, costPence: -1 }))).toEqual([400, "costPence"]);
    await must(send(lost));
    const { entries } = await must(send({ ...lost, now: "posted", costPence: 495 }));
    const kept = entries.filter(({ kind }: { kind: string }) => kind === "lost");
    expect(kept.map(({ document }: { document: { now: string } }) => document.now)).toEqual([
      "kept",
      "posted",
    ]);
  });

  it("passes a fine on only for a time with this hirer, at most at the stated fee, and once", async () => {
    const { depot, id } = asked;
    const copy = [await sendPhotograph(depot, id, await makeJpeg())];
    const fine = {
      kind: "notice",
      id: "notice-1",
      what: "fine",
      issuer: "Invented Council",
      reference: "PCN 1",
      at: "2026-07-04T15:00",
      where: "Harbour car park, invented",
      pence: 3500,
      feePence: 1500,
      photographs: copy,
    };
    expect(await problem(note(asked, { ...fine, at: "2026-07-06T11:00" }))).toEqual([400, "at"]);
    expect(await problem(note(asked, { ...fine, feePence: 1501 }))).toEqual([400, "feePence"]);
    expect(await problem(note(asked, { ...fine, photographs: [] }))).toEqual([400, "photographs"]);
    await must(note(asked, fine));
    await must(note(asked, fine));
    // the hirer sees it with its notice, and no other photograph of the depot's
    const statement = await must(depot.call(null, "GET", `/guide/${token}/statement`));
    const shown = statement.entries.find(({ kind }: { kind: string }) => kind === "notice");
    expect(shown.document).toMatchObject({ reference: "PCN 1", pence: 3500 });
    const seen = (sha256: string | undefined) =>
      depot.app.inject({ method: "GET", url: `/api/guide/${token}/photos/${sha256}?size=small` });
    expect((await seen(copy[0])).statusCode).toBe(200);
    const other = await sendPhotograph(depot, id, await makeJpeg());
    expect((await seen(other)).statusCode).toBe(404);
    const lineId = `notice:${shown.id}`;
    const told = (answer: string, text: string, about = lineId) =>
      depot.call(null, "POST", `/guide/${token}/statement`, { lineId: about, answer, text });
    expect(await problem(told("dispute", "", lineId))).toEqual([400, "text"]);
    expect(await problem(told("dispute", "Not me.", "notice:none"))).toEqual([400, "lineId"]);
    const sums = async () => {
      const { due, disputed, owed, ...rest } = await must(depot.call("desk", "GET", `/hires/${id}/money`));
      // what invoices ask, with what is still to be invoiced, is what is due: no more, no less
      const asked = [...rest.invoices, ...(rest.toInvoice === null ? [] : [rest.toInvoice])];
      expect(asked.reduce((sum, { total }) => sum + total.pence, 0)).toBe(due.pence);
      return { due: due.pence, disputed: disputed.pence, owed: owed.pence };
    };
    const before = await sums();
    expect(before.disputed).toBe(0);
    await must(told("dispute", "I had paid at the machine."));
    const issued = await must(depot.call("desk", "POST", `/hires/${id}/invoices`));
    const [invoice] = issued.invoices;
    const document = (await depot.store.invoices.get(invoice.id))?.document as unknown as InvoiceDocument;
    const named = (lines: readonly { readonly line: string }[] = []) => lines.map(({ line }) => line);
    expect(named(document.lines)).not.toContain("fine");
    expect(named(document.disputed).filter((line) => line !== "damage")).toEqual(["fine", "administration"]);
    const paper = await depot.app.inject({
      url: `/api/hires/${id}/invoices/${invoice.id}/paper`,
      headers: { cookie: depot.cookie("desk") },
    });
    const text = (await readPdf(paper.rawPayload)).pages.join(" ").replaceAll(/\s+/g, " ");
    expect(text).toMatch(
      /Disputed, not asked for .*PCN 1 £35 .*PCN 1 £15 Disputed, no part of the total £50 /,
    );
    // the sum and its fee are not asked for while they are disputed
    const without = { due: before.due - 5000, disputed: 5000, owed: before.owed - 5000 };
    expect(await sums()).toEqual(without);
    const answered = await must(reply("reply", "Send us the ticket, and we pass it on.", lineId));
    expect(answered.entries.slice(-2)).toMatchObject([
      { kind: "dispute", about: lineId, by: null, document: { text: "I had paid at the machine." } },
      { kind: "reply", about: lineId, by: "Dee Desk" },
    ]);
    expect((await must(told("accept", ""))).entries.at(-1)).toMatchObject({ kind: "accept", about: lineId });
    const charges = (await depot.store.payments.ofHire(id)).filter(({ kind }) => kind === "charge");
    expect(charges.map(({ document, pence }) => [document.line, pence])).toEqual([
      ["fine", 3500],
      ["administration", 1500],
    ]);
    expect(await sums()).toEqual(before);
    await must(told("dispute", "And here is the ticket."));
    await must(reply("withdraw", "As goodwill.", lineId));
    expect(await sums()).toEqual({ ...without, disputed: 0 });
    const credits = (await depot.store.payments.ofHire(id)).filter(({ kind }) => kind === "credit");
    expect(credits.map(({ document, pence }) => [document.line, pence])).toEqual([
      ["fine", 3500],
      ["administration", 1500],
    ]);
    expect(await problem(reply("withdraw", "Once more.", lineId))).toEqual([400, "answer"]);
    expect(await sums()).toEqual({ ...without, disputed: 0 });
  });

  it("gives nothing back of a disputed toll that was paid, and takes back nothing that was credited by hand", async () => {
    const { depot, id } = asked;
    const toll = {
      kind: "notice",
      id: "notice-2",
      what: "toll",
      issuer: "Invented Bridge",
      reference: "B 2",
      at: "2026-07-04T16:00",
      where: "Bridge, invented",
      pence: 600,
      feePence: 0,
      photographs: [await sendPhotograph(depot, id, await makeJpeg())],
    };
    const { entries } = await must(note(asked, toll));
    const lineId = `notice:${entries.at(-1).id}`;
    const money = () => must(depot.call("desk", "GET", `/hires/${id}/money`));
    const { owed } = await money();
    expect(owed.pence).toBeGreaterThanOrEqual(600);
    const on = "2026-07-11";
    const payment = { id: "pays-all", kind: "payment", method: "card", on, note: "", pence: owed.pence };
    await must(depot.call("desk", "POST", `/hires/${id}/payments`, payment));
    const told = { lineId, answer: "dispute", text: "We took the ferry." };
    await must(depot.call(null, "POST", `/guide/${token}/statement`, told));
    expect(await money()).toMatchObject({ owed: { pence: 0 }, disputed: { pence: 0 } });
    const credit = { id: "by-hand", kind: "credit", line: "toll", pence: 600, on, note: "Ferry ticket seen" };
    await must(depot.call("manager", "POST", `/hires/${id}/money/charges`, credit));
    expect(await problem(reply("withdraw", "The ticket was right.", lineId))).toEqual([400, "answer"]);
    expect((await money()).owed.pence).toBe(-600);
  });

  it("takes back the charge of the toll that is meant, and none that was entered beside it", async () => {
    const { depot, id } = asked;
    const toll = {
      kind: "notice",
      id: "notice-3",
      what: "toll",
      issuer: "Invented Tunnel",
      reference: "T 3",
      at: "2026-07-04T17:00",
      where: "Tunnel, invented",
      pence: 700,
      feePence: 0,
      photographs: [await sendPhotograph(depot, id, await makeJpeg())],
    };
    const { entries } = await must(note(asked, toll));
    const lineId = `notice:${entries.at(-1).id}`;
    const on = "2026-07-11";
    const charge = { id: "beside", kind: "charge", line: "fine", pence: 4500, on, note: "Bus lane" };
    await must(depot.call("desk", "POST", `/hires/${id}/money/charges`, charge));
    await must(
      depot.call(null, "POST", `/guide/${token}/statement`, {
        lineId,
        answer: "dispute",
        text: "We walked.",
      }),
    );
    await must(reply("withdraw", "As goodwill.", lineId));
    const credits = (await depot.store.payments.ofHire(id)).filter(({ kind }) => kind === "credit");
    expect(credits.map(({ pence }) => pence)).toContain(700);
    expect(credits.map(({ pence }) => pence)).not.toContain(4500);
  });
});
