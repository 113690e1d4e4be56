import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { may } from "../auth/roles.ts";
import { makeDepot, PASSWORD, type TestDepot } from "./depot-for-tests.ts";
import { openApiDocument } from "./document.ts";
import type { Operation } from "./operation.ts";
import { operations } from "./operations.ts";

type Method = Parameters<TestDepot["call"]>[1];
const OPEN = [
  "GET /api/health",
  "POST /api/session",
  "GET /api/setup/{token}",
  "POST /api/setup/{token}",
  "GET /api/setup/{token}/places",
  "GET /api/guide/{token}",
  "POST /api/guide/{token}/records",
  "GET /api/guide/{token}/statement",
  "POST /api/guide/{token}/statement",
  "PUT /api/guide/{token}/photos/{sha256}",
  "GET /api/guide/{token}/papers/{paper}",
  "GET /api/guide/{token}/photos/{sha256}",
  "GET /api/calendar/{token}",
];

describe("who may call what", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("answers 401 unsigned on every operation of the OpenAPI document but those that are open", async () => {
    const document = (await openApiDocument()) as { paths: Record<string, Record<string, unknown>> };
    const listed = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => ({ method: method.toUpperCase(), path })),
    );
    // the document leaves HEAD out, as it answers what GET does
    listed.push({ method: "HEAD", path: "/api/photos/{sha256}" });
    expect(listed).toHaveLength(Object.keys(operations).length);
    for (const { method, path } of listed) {
      if (OPEN.includes(`${method} ${path}`)) continue;
      const filled = path.replace("/api", "").replace("{sha256}", "0".repeat(64)).replace("{id}", "x");
      const answer = await depot.app.inject({ method: method as "GET", url: `/api${filled}` });
      expect(answer.statusCode, `${method} ${path}`).toBe(401);
      const wrong = await depot.app.inject({
        method: method as "GET",
        url: `/api${filled}`,
        headers: { cookie: "setfair_session=guessed" },
      });
      expect(wrong.statusCode, `${method} ${path} with a guessed session`).toBe(401);
    }
  });

  it("answers 401 unsigned on an address that is no operation, and 404 signed", async () => {
    expect((await depot.call(null, "GET", "/no/such/thing")).status).toBe(401);
    expect((await depot.call("yard", "GET", "/no/such/thing")).status).toBe(404);
  });

  it("serves health and the OpenAPI document to anyone", async () => {
    expect(await depot.call(null, "GET", "/health")).toMatchObject({ status: 200, body: { ok: true } });
    expect((await depot.call(null, "GET", "/openapi.json")).body).toEqual(await openApiDocument());
  });

  it("answers 403 to a role that the table does not name, on every operation", async () => {
    for (const operation of Object.values(operations) as Operation[]) {
      if (typeof operation.access === "string") continue;
      for (const role of ["desk", "yard"] as const) {
        if (may(role, operation.access.act)) continue;
        const url = operation.url.replace(":sha256", "0".repeat(64)).replace(":id", "x");
        expect(
          (await depot.call(role, operation.method as Method, url, {})).status,
          `${role} ${operation.method} ${url}`,
        ).toBe(403);
      }
    }
  });

  it("does nothing for a page of another origin, even with the cookie", async () => {
    const send = (headers: Record<string, string>) =>
      depot.app.inject({
        method: "POST",
        url: "/api/session",
        headers,
        payload: { login: "desk", password: PASSWORD },
      });
    expect((await send({ origin: "https://elsewhere.example.org" })).statusCode).toBe(403);
    expect((await send({ "sec-fetch-site": "cross-site" })).statusCode).toBe(403);
    const own = await send({
      origin: "http://localhost:80",
      host: "localhost:80",
      "sec-fetch-site": "same-origin",
    });
    expect(own.statusCode).toBe(200);
    expect(String(own.headers["set-cookie"])).toMatch(/HttpOnly; SameSite=Lax/);
  });

  it("signs out for good, and the sign-in is limited", async () => {
    const signIn = (password: string) =>
      depot.app.inject({
        method: "POST",
        url: "/api/session",
        payload: { login: "desk", password },
        remoteAddress: "192.0.2.7",
      });
    const cookie = String((await signIn(PASSWORD)).headers["set-cookie"]).split(";")[0] ?? "";
    const who = () => depot.app.inject({ method: "GET", url: "/api/session", headers: { cookie } });
    expect((await who()).statusCode).toBe(200);
    await depot.app.inject({ method: "DELETE", url: "/api/session", headers: { cookie } });
    expect((await who()).statusCode).toBe(401);
    const wrong = await signIn("not it at all");
    expect([wrong.statusCode, wrong.json().error.code]).toEqual([401, "wrongSignIn"]);
    for (let k = 0; k < 9; k++) await signIn("not it at all");
    expect((await signIn(PASSWORD)).statusCode).toBe(429);
  });

  it("sends a strict content security policy without unsafe-inline", async () => {
    const { headers } = await depot.app.inject("/api/health");
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe-|https?:|\*/);
  });
});
