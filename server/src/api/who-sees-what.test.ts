/** The same hire asked for by manager, desk and yard through every operation that reads: what each is shown of it. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { may } from "../auth/roles.ts";
import { FIELD_RIGHTS, PAPER_RIGHTS } from "../auth/who-sees-what.ts";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { openApiDocument } from "./document.ts";
import { type LivedHire, liveHire, makeJpeg, sendPhotograph } from "./lived-hire-for-tests.ts";
import type { Operation } from "./operation.ts";
import { type OperationId, operations } from "./operations.ts";
import { givenBy } from "./rights-document.ts";
import { CUSTOMER, PARTY } from "./samples-for-tests.ts";

const ADDRESS = "7 Invented Lane, Nowhere";
const PAYER = { name: "Aunt Payer", email: "aunt@example.org", address: "9 Other Lane, Nowhere" };
/** pence that stand nowhere else */
const PAID = 12_347;
/** Texts that only the desk is to read of this hire: addresses, birthday, licence, who pays, sums. */
const KEPT = [
  ADDRESS,
  CUSTOMER.email,
  "Aunt Payer",
  "1985-02-03",
  "firstCarEntitlement",
  `${PAID}`,
  "123.47",
];
const STAFF = ["manager", "desk", "yard"] as const;

let depot: TestDepot;
let hire: LivedHire;
let bill = "";
let soon = "";

const must = async (...args: Parameters<TestDepot["call"]>) => {
  const answer = await depot.call(...args);
  if (answer.status !== 200) throw new Error(`${args.join(" ")}: ${JSON.stringify(answer.body)}`);
  return answer.body;
};
const raw = (as: (typeof STAFF)[number], path: string) =>
  depot.app.inject({ method: "GET", url: `/api${path}`, headers: { cookie: depot.cookie(as) } });

beforeAll(async () => {
  depot = await makeDepot("sqlite");
  hire = await liveHire(depot);
  const customer = { ...CUSTOMER, address: ADDRESS };
  await must("desk", "PUT", `/hires/${hire.id}/customer`, customer);
  await must("desk", "PUT", `/hires/${hire.id}/payer`, { payer: PAYER });
  const paid = { id: randomUUID(), kind: "payment", pence: PAID, on: "2026-07-06", method: "cash" };
  await must("desk", "POST", `/hires/${hire.id}/payments`, paid);
  bill = await sendPhotograph(depot, hire.id, await makeJpeg(120, 80));
  const fine = {
    kind: "notice",
    id: randomUUID(),
    what: "fine",
    issuer: "Invented Council",
    reference: "PCN-1",
  };
  const where = { at: "2026-07-04T10:00", where: "Keswick", pence: 3500, feePence: 0, photographs: [bill] };
  await must("desk", "POST", `/hires/${hire.id}/settlement/notes`, { ...fine, ...where });
  // another of the same person, next week: nothing of it is of the day
  const next = { customer, party: PARTY, from: "2026-07-13T12:00", to: "2026-07-16T10:00" };
  soon = (await must("desk", "POST", "/hires", { ...next, vehicleId: "pv2" })).hire.id;
}, 60_000);
afterAll(() => depot.close());

/** An address of an operation with what it names of this depot; null where it names what is not there. */
function pathOf(id: OperationId): string | null {
  const { url }: Operation = operations[id];
  const path = url.replace(/^\/vehicles\/:id/, "/vehicles/pv2").replace(/^\/hires\/:id/, `/hires/${hire.id}`);
  const days = "from=2026-06-20&to=2026-07-20";
  const asked: Partial<Record<OperationId, string>> = {
    diary: `${path}?${days}`,
    tidyDiary: `${path}?${days}`,
    findPlaces: `${path}?q=Keswick`,
    forecastOutcomes: path,
    listHires: `${path}?q=ingrid`,
    readPhoto: `/photos/${hire.photographs.back}`,
    writePriceList: "/terms/prices/lists/kit",
  };
  return asked[id] ?? (path.includes(":") ? null : path);
}

const readsOf = (role: (typeof STAFF)[number]) =>
  (Object.keys(operations) as OperationId[]).filter((id) => {
    const { method, access }: Operation = operations[id];
    return method === "GET" && typeof access !== "string" && may(role, access.act);
  });

describe("what the yard is shown", () => {
  it("is no address, birthday, licence, payer or sum of a hire, through whatever operation it asks", async () => {
    let asked = 0;
    for (const id of readsOf("yard")) {
      const path = pathOf(id);
      if (path === null) continue;
      const answer = await raw("yard", path);
      expect([200, 404], `${id} ${path} ${answer.body.slice(0, 200)}`).toContain(answer.statusCode);
      asked += answer.statusCode === 200 ? 1 : 0;
      for (const text of KEPT) expect(answer.body.includes(text), `${id} says ${text}`).toBe(false);
      if (path.startsWith("/hires")) expect(answer.body, id).not.toMatch(/"(pence|owedPence)":/);
    }
    expect(asked).toBeGreaterThan(35);
  }, 60_000);

  it("could be no personal field or sum of a hire by the schemas either, but names and the telephone of the day", () => {
    const given = new Set(
      readsOf("yard").flatMap((id) => {
        const { answer, url }: Operation = operations[id];
        // prices of the firm are nobody's
        if (answer === undefined || url.startsWith("/terms")) return [];
        return givenBy(answer)
          .filter(({ right }) => right === null || may("yard", right.may) || right.onTheDay !== undefined)
          .map(({ kind }) => kind);
      }),
    );
    expect([...given].sort()).toEqual(["names", "telephone"]);
  });

  it("is name, vehicle, party and the telephone of the day", async () => {
    const page = await must("yard", "GET", `/hires/${hire.id}`);
    expect(page.customer).toEqual({ name: CUSTOMER.name, telephone: CUSTOMER.telephone });
    expect(page.driverNames).toEqual([{ id: "t1", name: CUSTOMER.name }]);
    expect(page.hire).toMatchObject({ customer: CUSTOMER.name, people: 2, vehicle: { id: "pv2" } });
    expect(page.differences.length).toBeGreaterThan(0);
    const later = await must("yard", "GET", `/hires/${soon}`);
    expect(later.customer).toEqual({ name: CUSTOMER.name });
  });

  it("is told of licence, insurance and money only that something is open there", async () => {
    const seen = async (as: "desk" | "yard") => {
      const { glass } = await must(as, "GET", `/hires/${soon}`);
      const entries = glass.gates.filter(({ gate }: { gate: string }) =>
        ["licence", "insurance", "money"].includes(gate),
      );
      return entries.flatMap((gate: { findings: { finding: unknown }[] }) =>
        gate.findings.map(({ finding }) => finding),
      );
    };
    const desk = await seen("desk");
    expect(desk.length).toBeGreaterThan(0);
    for (const finding of await seen("yard"))
      expect(finding).toMatchObject({ code: "gate.atDesk", facts: {}, sources: [], mends: [] });
    expect((await seen("yard")).length).toBeGreaterThan(0);
  });

  it("is none of the papers with addresses or sums, and no address on the others", async () => {
    for (const [paper, act] of Object.entries(PAPER_RIGHTS)) {
      const answer = await raw("yard", `/hires/${hire.id}/papers/${paper}`);
      if (!may("yard", act)) expect(answer.statusCode, paper).toBe(403);
      else if (answer.statusCode === 200)
        expect((await readPdf(answer.rawPayload)).pages.join(" "), paper).not.toContain(ADDRESS);
    }
    const own = await raw("desk", `/hires/${hire.id}/papers/condition`);
    expect((await readPdf(own.rawPayload)).pages.join(" ")).toContain(ADDRESS);
  }, 60_000);

  it("is photographs of the vehicle, and not of a bill", async () => {
    expect((await raw("yard", `/photos/${hire.photographs.back}`)).statusCode).toBe(200);
    expect((await raw("yard", `/photos/${bill}`)).statusCode).toBe(403);
    expect((await raw("desk", `/photos/${bill}`)).statusCode).toBe(200);
  });

  it("is no signature of the hirer in what a tablet keeps", async () => {
    const { jobs } = await must("yard", "GET", "/yard/jobs");
    const job = jobs.find(
      ({ hireId, walk }: Record<string, string>) => hireId === hire.id && walk === "back",
    );
    expect(job.outRecords.length).toBeGreaterThan(0);
    expect(JSON.stringify(job.outRecords)).not.toMatch(/strokes|Ingrid/);
  });
});

describe("what desk and manager are shown", () => {
  it.each(["desk", "manager"] as const)("the %s sees the whole hire", async (as) => {
    const page = await must(as, "GET", `/hires/${hire.id}`);
    const { customer, drivers, payments, money, settlement, history } = page;
    expect(customer).toEqual({ ...CUSTOMER, address: ADDRESS });
    expect(drivers).toMatchObject([{ born: "1985-02-03" }]);
    expect(payments.some(({ amount }: { amount: { pence: number } }) => amount.pence === PAID)).toBe(true);
    for (const part of [money, settlement, history, page.quote]) expect(part).toBeTruthy();
    expect((await must(as, "GET", `/hires/${hire.id}/notes`)).payer).toEqual(PAYER);
  });

  it("every field of the table stands in the API document, with whom it is given to, and may be left out", async () => {
    const { components } = (await openApiDocument()) as {
      components: { schemas: Record<string, { properties: Record<string, object>; required: string[] }> };
    };
    for (const [name, fields] of Object.entries(FIELD_RIGHTS))
      for (const [field, right] of Object.entries(fields)) {
        const { properties, required } = components.schemas[name] ?? { properties: {}, required: [] };
        expect(properties[field], `${name}.${field}`).toMatchObject({ "x-right": right.may });
        expect(required, name).not.toContain(field);
      }
  });
});
