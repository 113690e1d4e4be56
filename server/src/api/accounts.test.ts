import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, PASSWORD, type TestDepot } from "./depot-for-tests.ts";

const NEW = { name: "Wren Loader", login: "Wren", role: "yard", password: "four plain words here" };

describe("who signs in", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  const list = async (): Promise<{ id: string; login: string; role: string; shutAt: string | null }[]> =>
    (await depot.call("manager", "GET", "/accounts")).body.accounts;
  const idOf = async (login: string) => (await list()).find((each) => each.login === login)?.id ?? "";
  const signIn = (login: string, password: string) =>
    depot.call(null, "POST", "/session", { login, password });

  it("a manager lets somebody in, who then signs in with their role and nothing more", async () => {
    const made = await depot.call("manager", "POST", "/accounts", NEW);
    expect(made).toMatchObject({ status: 200, body: { login: "wren", role: "yard", shutAt: null } });
    expect(JSON.stringify(made.body)).not.toMatch(/password|argon/i);
    const session = await signIn("WREN", NEW.password);
    expect(session.body.may).toContain("record.write");
    expect(session.body.may).not.toContain("account.manage");
  });

  it("names the field of a name that is taken, of a short password, and knows no hirer's sign-in", async () => {
    const fields = async (change: object) =>
      (await depot.call("manager", "POST", "/accounts", { ...NEW, ...change })).body.error.problems.map(
        ({ path }: { path: string }) => path,
      );
    expect(await fields({})).toEqual(["login"]);
    expect(await fields({ login: "other", password: "short" })).toEqual(["password"]);
    expect(await fields({ login: "other", role: "hirer" })).toEqual(["role"]);
  });

  it("whoever is shut out is signed out at once and comes in again only when let in", async () => {
    const id = await idOf("wren");
    const rest = { name: NEW.name, role: "yard" };
    const shut = await depot.call("manager", "PUT", `/accounts/${id}`, { ...rest, shut: true });
    expect(shut.body.shutAt).not.toBeNull();
    expect((await signIn("wren", NEW.password)).status).toBe(401);
    await depot.call("manager", "PUT", `/accounts/${id}`, { ...rest, shut: false });
    expect((await signIn("wren", NEW.password)).status).toBe(200);
  });

  it("the last manager who can sign in stays one, and nobody shuts out themselves", async () => {
    const id = await idOf("manager");
    const put = (change: object) =>
      depot.call("manager", "PUT", `/accounts/${id}`, {
        name: "Pat Manager",
        role: "manager",
        shut: false,
        ...change,
      });
    expect((await put({ role: "desk" })).body.error.problems).toMatchObject([{ path: "role" }]);
    expect((await put({ shut: true })).body.error.problems).toMatchObject([{ path: "shut" }]);
    expect((await list()).find((each) => each.id === id)).toMatchObject({ role: "manager", shutAt: null });
  });

  it("a password that was forgotten is set anew, and the old one ends", async () => {
    const id = await idOf("wren");
    const password = "another few words";
    expect((await depot.call("manager", "PUT", `/accounts/${id}/password`, { password })).status).toBe(200);
    expect((await signIn("wren", NEW.password)).status).toBe(401);
    expect((await signIn("wren", password)).status).toBe(200);
    expect((await depot.call("manager", "PUT", "/accounts/nobody/password", { password })).status).toBe(404);
  });

  it("one's own password needs the one until now; other devices are signed out, this one is not", async () => {
    const change = (current: string) =>
      depot.app.inject({
        method: "PUT",
        url: "/api/session/password",
        headers: { cookie: depot.cookie("desk") },
        payload: { current, password: "a fresh one for the desk" },
      });
    expect((await change("not it at all")).json().error.problems).toMatchObject([{ path: "current" }]);
    const answer = await change(PASSWORD);
    expect(answer.statusCode).toBe(200);
    const cookie = String(answer.headers["set-cookie"]).split(";")[0] ?? "";
    const here = await depot.app.inject({ method: "GET", url: "/api/session", headers: { cookie } });
    expect(here.json().user.login).toBe("desk");
    expect((await depot.call("desk", "GET", "/session")).status).toBe(401);
    expect((await signIn("desk", "a fresh one for the desk")).status).toBe(200);
  });

  it("what was done to sign-ins stands in the depot's own log", async () => {
    const { rows } = await depot.store.audit.list({});
    const acts = rows.map(({ act }) => act).filter((act) => act.startsWith("account."));
    expect([...new Set(acts)].sort()).toEqual([
      "account.added",
      "account.changed",
      "account.passwordChanged",
      "account.passwordSet",
    ]);
  });
});
