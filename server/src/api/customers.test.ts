import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../papers/read-pdf-for-tests.ts";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, PARTY, PERIOD } from "./samples-for-tests.ts";

describe("the hirer as papers name them", () => {
  let depot: TestDepot;
  let id = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    const body = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    id = (await depot.call("desk", "POST", "/hires", body)).body.hire.id;
    await depot.call("desk", "POST", `/hires/${id}/quote`, { extras: [], accept: false });
    await depot.call("desk", "PUT", `/hires/${id}/drivers`, {
      drivers: [DRIVER, { ...DRIVER, id: "t2", name: "Odd Example", main: false }],
    });
  });
  afterAll(() => depot.close());

  const agreement = async () => {
    const answer = await depot.app.inject({
      method: "GET",
      url: `/api/hires/${id}/papers/agreement`,
      headers: { cookie: depot.cookie("desk") },
    });
    return (await readPdf(answer.rawPayload)).pages.join("\n").replaceAll(/\s+/g, " ");
  };
  const particulars = (driverId: string, body: object) =>
    depot.call("desk", "PUT", `/hires/${id}/drivers/${driverId}/particulars`, body);

  it("a name that was misheard is put right everywhere, and is found by the new one", async () => {
    const answer = await depot.call("desk", "PUT", `/hires/${id}/customer`, {
      ...CUSTOMER,
      name: "Ingrid Samplewood",
      telephone: "07700 900109",
      address: "3 Invented Row, Nowhere",
    });
    expect(answer.body.hire.customer).toBe("Ingrid Samplewood");
    expect(answer.body.customer).toMatchObject({
      telephone: "07700 900109",
      address: "3 Invented Row, Nowhere",
    });
    const found = async (q: string) =>
      (await depot.call("desk", "GET", `/hires?q=${encodeURIComponent(q)}`)).body.hires.length;
    expect(await found("samplewood")).toBe(1);
    expect(await found("07700900109")).toBe(1);
    expect(await found("07700900101")).toBe(0);
    const bad = await depot.call("desk", "PUT", `/hires/${id}/customer`, { ...CUSTOMER, email: "here" });
    expect(bad.body.error.problems).toEqual([
      { path: "email", expected: "a mail address such as name@example.org, or nothing" },
    ]);
    const none = await depot.call("desk", "PUT", `/hires/${id}/customer`, {
      ...CUSTOMER,
      name: "Ingrid Samplewood",
      email: "",
      address: "3 Invented Row, Nowhere",
    });
    expect(none.body.customer.email).toBe("");
    expect((await depot.call("yard", "PUT", `/hires/${id}/customer`, CUSTOMER)).status).toBe(403);
  });

  it("the agreement bears the addresses and the licence numbers that a notice asks for", async () => {
    expect(await agreement()).toContain("number not given");
    await particulars("t1", { licenceNumber: "exmpl 852034 ie9zz" });
    const answer = await particulars("t2", { address: "9 Other Lane, Elsewhere" });
    expect(answer.body.drivers).toMatchObject([
      { driverId: "t1", address: null, numberUntil: "2027-01-02" },
      { driverId: "t2", address: "9 Other Lane, Elsewhere", numberUntil: null },
    ]);
    const paper = await agreement();
    expect(paper).toContain("EXMPL 852034 IE9ZZ");
    expect(paper).toContain("9 Other Lane, Elsewhere");
    expect(paper).toContain("of 3 Invented Row, Nowhere");
    expect((await particulars("nobody", { address: "x" })).status).toBe(404);
  });

  it("a licence number is sealed, shown on demand with a line in the log, and gone in time", async () => {
    const page = await depot.call("desk", "GET", `/hires/${id}`);
    expect(JSON.stringify(page.body)).not.toContain("852034");
    const read = () => depot.call("desk", "POST", `/hires/${id}/drivers/t1/licence-number/reading`);
    expect((await read()).body).toEqual({ licenceNumber: "EXMPL 852034 IE9ZZ" });
    const { rows } = await depot.store.audit.list({ about: id });
    expect(rows.map(({ act }) => act)).toContain("licence.read");
    depot.at("2027-01-03T08:00:00.000Z");
    await depot.store.licences.eraseDue();
    expect((await read()).status).toBe(404);
    expect(await agreement()).not.toContain("852034");
  });

  it("a person is erased by a manager only, and only when every hire of theirs is over", async () => {
    const erase = (as: "manager" | "desk") => depot.call(as, "POST", `/hires/${id}/customer/erasure`);
    expect((await erase("desk")).status).toBe(403);
    const open = await erase("manager");
    expect(open).toMatchObject({ status: 409, body: { error: { problems: [{ path: "stage" }] } } });
    await depot.call("desk", "POST", `/hires/${id}/end`, { as: "lost", reason: "changed their mind" });
    expect((await erase("manager")).status).toBe(200);
    const { body } = await depot.call("manager", "GET", `/hires/${id}`);
    expect(body.hire.customer).toBe("(erased)");
    expect(body.customer).toEqual({ name: "", telephone: "", email: "" });
    expect(body.drivers).toEqual([]);
    expect((await erase("manager")).status).toBe(404);
  });
});
