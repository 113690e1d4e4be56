/** Honest bodies with one value spoiled: refused by the field's name or taken, never a fault of ours. */
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { heron, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, PERIOD, TRIP } from "./samples-for-tests.ts";

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type Path = readonly (string | number)[];

function pathsOf(value: unknown, at: Path = []): Path[] {
  if (typeof value !== "object" || value === null) return [at];
  const inner = Array.isArray(value) ? value.map((each, k) => [k, each] as const) : Object.entries(value);
  return [...(at.length > 0 ? [at] : []), ...inner.flatMap(([key, each]) => pathsOf(each, [...at, key]))];
}

/** A copy with one value put in at a path. */
function spoil(value: unknown, path: Path, spoiled: Json): unknown {
  const copy: unknown = structuredClone(value);
  let here = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string | number, unknown>;
  here[path.at(-1) ?? ""] = spoiled;
  return copy;
}

const SPOILED: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>(
    null,
    "",
    -1,
    0,
    0.5,
    1e15,
    -1e-9,
    1e308,
    true,
    [],
    {},
    "\u0000",
    "9999-12-31T23:59",
    "0000-01-01T00:00",
    "2026-03-29T01:30",
    "Europe/Berlin",
    "ZZ",
  ),
  fc.double({ noNaN: true, min: -1e4, max: 1e4 }),
  fc.string({ maxLength: 8 }),
);

describe("honest bodies with one value spoiled", () => {
  let depot: TestDepot;
  let hireId = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    hireId = (
      await depot.call("desk", "POST", "/hires", {
        customer: CUSTOMER,
        party: PARTY,
        ...PERIOD,
        vehicleId: "pv2",
      })
    ).body.hire.id;
    await depot.call("desk", "PUT", `/hires/${hireId}/drivers`, { drivers: [DRIVER] });
  });
  afterAll(() => depot.close());

  const tried = (
    name: string,
    as: "desk" | "manager",
    method: "POST" | "PUT",
    path: () => string,
    body: unknown,
  ) =>
    it(name, { timeout: 240_000 }, async () => {
      const statuses = new Set<number>();
      await fc.assert(
        fc.asyncProperty(fc.constantFrom(...pathsOf(body)), SPOILED, async (at, value) => {
          const answer = await depot.call(as, method, path(), spoil(body, at, value));
          statuses.add(answer.status);
          expect(
            answer.status,
            `${at.join(".")} = ${JSON.stringify(value)}: ${JSON.stringify(answer.body).slice(0, 400)}`,
          ).toBeLessThan(500);
          if (answer.status === 400) expect(answer.body.error.problems.length).toBeGreaterThan(0);
        }),
        { numRuns: 40, seed: 5, endOnFailure: true },
      );
      expect([...statuses]).toContain(400);
    });

  tried("an enquiry", "desk", "POST", () => "/hires", {
    customer: CUSTOMER,
    party: PARTY,
    ...PERIOD,
    vehicleId: "pv2",
  });
  tried("an availability question", "desk", "POST", () => "/availability", { party: PARTY, ...PERIOD });
  tried("drivers", "desk", "PUT", () => `/hires/${hireId}/drivers`, { drivers: [DRIVER] });
  tried("a load", "desk", "PUT", () => `/hires/${hireId}/load`, LOAD);
  tried("a trip", "desk", "PUT", () => `/hires/${hireId}/trip`, TRIP);
  tried("a vehicle", "manager", "PUT", () => "/vehicles/pv2", { description: heron() });
});
