import { createWords } from "@setfair/words";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "../api/depot-for-tests.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, PERIOD, PLACE, TRIP } from "../api/samples-for-tests.ts";
import { readPdf } from "./read-pdf-for-tests.ts";

describe("the papers of a hire", () => {
  let depot: TestDepot;
  let id = "";
  const fetch = (path: string, as: "desk" | null = "desk") =>
    depot.app.inject({
      method: "GET",
      url: `/api${path}`,
      ...(as === null ? {} : { headers: { cookie: depot.cookie(as) } }),
    });
  const text = async (path: string) => {
    const answer = await fetch(path);
    expect(answer.statusCode, answer.body.slice(0, 300)).toBe(200);
    expect(answer.headers["content-type"]).toBe("application/pdf");
    const { pages, tagged } = await readPdf(answer.rawPayload);
    expect(tagged).toBe(true);
    return pages.join("\n").replaceAll(/\s+/g, " ");
  };
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    const body = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    id = (await depot.call("desk", "POST", "/hires", body)).body.hire.id;
  }, 30_000);
  afterAll(() => depot.close());

  it("says what is missing while there is no quote", async () => {
    const answer = await fetch(`/hires/${id}/papers/quote`);
    expect(answer.statusCode).toBe(409);
    expect(answer.json().error.problems).toEqual([{ path: "quote", expected: "a quote on this hire" }]);
  });

  it("the quote has every line, the cancellation scale and the day until which it holds", async () => {
    const { body } = await depot.call("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: false });
    const paper = await text(`/hires/${id}/papers/quote`);
    const pounds = (pence: number) => createWords().moneyText({ currency: "GBP", pence });
    expect(paper).toContain(pounds(body.quote.total.pence));
    for (const line of body.quote.result.lines) expect(paper).toContain(pounds(line.amount.pence));
    expect(paper).toContain("If you cancel");
    expect(paper).toContain("This price holds until");
  });

  it("the agreement names the drivers, the vehicle and the statement of liability, and no weather", async () => {
    await depot.call("desk", "PUT", `/hires/${id}/drivers`, { drivers: [DRIVER] });
    await depot.call("desk", "PUT", `/hires/${id}/load`, LOAD);
    const paper = await text(`/hires/${id}/papers/agreement`);
    expect(paper).toContain("SF26 HRN");
    expect(paper).toContain("Ingrid Example");
    expect(paper).toContain("Statement of liability");
    expect(paper).not.toMatch(/stormy|set fair|rain/i);
  });

  it("the country paper holds limits and kit of the route with their sources and what is unsettled", async () => {
    const stop = { ...TRIP.stops[0], place: { ...PLACE, name: "Invented pitch", country: "FR" } };
    await depot.call("desk", "PUT", `/hires/${id}/trip`, { ...TRIP, stops: [stop] });
    const paper = await text(`/hires/${id}/papers/countries`);
    expect(paper).toContain("France");
    expect(paper).toMatch(/130 km\/h/);
    expect(paper).toContain("not settled");
    expect(paper).toContain("outside town: 90 in some départements");
    expect(paper).toContain("0.5 in Scotland");
    expect(paper).toContain("Where these rules come from");
  });

  it("the same countries go to the hirer's phone, each line with its doubt and its sources", async () => {
    const { body: link } = await depot.call("desk", "POST", `/hires/${id}/hirer-link`);
    const { body: guide } = await depot.call(null, "GET", `/guide/${link.token}`);
    const { body: desk } = await depot.call("desk", "GET", `/hires/${id}/abroad`);
    expect(guide.countries.map(({ card }: { card: object }) => card)).toEqual(desk.countries.cards);
    const france = guide.countries.find(({ card }: { card: { country: string } }) => card.country === "FR");
    expect(france.card.alcohol.limit).toMatchObject({ value: 0.5, unit: "g/L" });
    const home = guide.countries.find(({ card }: { card: { country: string } }) => card.country === "GB");
    expect(home.card.alcohol.line.note).toContain("0.5 in Scotland");
    expect(france.sources.length).toBeGreaterThan(1);
    for (const source of france.sources) expect(source).toMatch(/(read|noted) \d{4}-\d\d-\d\d/);
  });

  it("payments, both blank walk-rounds and the day sheet are there", async () => {
    expect(await text(`/hires/${id}/papers/receipt`)).toContain("Nothing has been paid yet");
    expect(await text(`/hires/${id}/papers/walkOut`)).toContain("late entry");
    expect(await text(`/hires/${id}/papers/walkBack`)).toContain("Other marks");
    expect(await text("/day-sheet?date=2026-07-03")).toContain("Going out (0)");
  });

  it("the pack of a day holds the sheet and each hire's papers, and names what is not ready", async () => {
    await depot.call("desk", "POST", `/hires/${id}/quote`, { accept: true });
    await depot.call("desk", "POST", `/hires/${id}/book`);
    const sheet = await text(`/day-sheet?date=${PERIOD.from.slice(0, 10)}`);
    const pack = await text(`/day-pack?date=${PERIOD.from.slice(0, 10)}`);
    expect(sheet).not.toContain("late entry");
    for (const each of ["Going out", "Statement of liability", "late entry", "SF26 HRN"])
      expect(pack).toContain(each);
  });

  it("the statement needs a return first, and nobody reads a paper without signing in", async () => {
    expect((await fetch(`/hires/${id}/papers/statement`)).statusCode).toBe(409);
    expect((await fetch(`/hires/${id}/papers/quote`, null)).statusCode).toBe(401);
    expect((await fetch(`/hires/${id}/papers/elsewhere`)).statusCode).toBe(400);
  });
});
