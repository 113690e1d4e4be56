/** Every operation of the OpenAPI document, given what it asks for, something near it, and nonsense: never a fault of ours. */
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { openApiDocument } from "./document.ts";

interface Schema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly additionalProperties?: Schema | boolean;
  readonly pattern?: string;
  readonly format?: string;
  readonly minimum?: number;
  readonly maximum?: number;
}
interface Listed {
  readonly id: string;
  readonly method: string;
  readonly path: string;
  readonly body: Schema | null;
}
type Components = Readonly<Record<string, Schema>>;

const LOCAL = fc.constantFrom(
  "2026-08-01T12:00",
  "2026-08-04T10:00",
  "2026-07-02T09:30",
  "2026-03-29T01:30",
  "not a time",
);

function textFor(schema: Schema): fc.Arbitrary<unknown> {
  if (schema.format === "date") return fc.constantFrom("2026-08-01", "2020-02-29", "2026-02-30");
  if (schema.format === "email") return fc.constantFrom("a@example.org", "no");
  if (schema.pattern?.includes("T([01]") === true) return LOCAL;
  if (schema.pattern?.includes("A-Z") === true) return fc.constantFrom("GB", "FR", "xx");
  if (schema.pattern?.includes("0-9a-f") === true) return fc.constantFrom("0".repeat(64), "z");
  return fc.oneof(
    fc.constantFrom("pv2", "t1", "Europe/London", "a", ""),
    fc.string({ maxLength: 30, unit: "grapheme" }),
  );
}

/** Values that a schema asks for, mostly. */
function valueFor(schema: Schema, components: Components, depth = 0): fc.Arbitrary<unknown> {
  if (schema.$ref !== undefined)
    return valueFor(components[schema.$ref.split("/").at(-1) ?? ""] ?? {}, components, depth);
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  const either = schema.anyOf ?? schema.oneOf;
  if (either !== undefined) return fc.oneof(...either.map((each) => valueFor(each, components, depth + 1)));
  switch (Array.isArray(schema.type) ? schema.type[0] : schema.type) {
    case "string":
      return textFor(schema);
    case "integer":
      return fc.integer({
        min: Math.max(schema.minimum ?? -5, -1e6),
        max: Math.min(schema.maximum ?? 50, 1e6),
      });
    case "number":
      return fc.double({
        min: Math.max(schema.minimum ?? -5, -1e6),
        max: Math.min(schema.maximum ?? 50, 1e6),
        noNaN: true,
      });
    case "boolean":
      return fc.boolean();
    case "array":
      return depth > 7
        ? fc.constant([])
        : fc.array(valueFor(schema.items ?? {}, components, depth + 1), { maxLength: 3 });
    case "object":
      return objectFor(schema, components, depth);
    default:
      return fc.jsonValue({ maxDepth: 2 });
  }
}

function objectFor(schema: Schema, components: Components, depth: number): fc.Arbitrary<unknown> {
  if (schema.properties === undefined) {
    const inner = typeof schema.additionalProperties === "object" ? schema.additionalProperties : {};
    return fc.dictionary(
      fc.constantFrom("a", "battery12", "high", "__proto__x"),
      valueFor(inner, components, depth + 1),
      { maxKeys: 2 },
    );
  }
  const fields = Object.fromEntries(
    Object.entries(schema.properties).map(([name, each]) => [name, valueFor(each, components, depth + 1)]),
  );
  return fc.record(fields, { requiredKeys: [...(schema.required ?? [])] });
}

async function listed(): Promise<{
  readonly operations: readonly Listed[];
  readonly components: Components;
}> {
  const document = (await openApiDocument()) as {
    paths: Record<
      string,
      Record<string, { operationId: string; requestBody?: { content: Record<string, { schema: Schema }> } }>
    >;
    components: { schemas: Components };
  };
  const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { operationId, requestBody }]) => ({
      id: operationId,
      method: method.toUpperCase(),
      path,
      body: requestBody?.content["application/json"]?.schema ?? null,
    })),
  );
  return { operations, components: document.components.schemas };
}

describe("every operation under random input", () => {
  let depot: TestDepot;
  let hireId = "";
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
    const party = { travellers: [{ id: "t1", kind: "adult" }], dogs: 0, experience: "first" };
    const customer = { name: "Example", telephone: "07700 900000", email: "e@example.org" };
    const asked = { customer, party, from: "2026-08-01T12:00", to: "2026-08-04T10:00", vehicleId: "pv2" };
    hireId = (await depot.call("desk", "POST", "/hires", asked)).body.hire.id;
  });
  afterAll(() => depot.close());

  const pathFor = (path: string) =>
    fc
      .record({
        id: fc.oneof(
          { weight: 4, arbitrary: fc.constant(hireId) },
          { weight: 1, arbitrary: fc.constantFrom("pv2", "x", "%00", "🚐", "'; drop table hire") },
        ),
        sha256: fc.constantFrom("0".repeat(64), "short"),
        token: fc.constantFrom("x".repeat(43), "%00".repeat(20)),
      })
      .map((given) =>
        path.replace(/\{(id|sha256|token)\}/g, (_, name: "id" | "sha256" | "token") =>
          encodeURIComponent(decodeURIComponent(given[name])),
        ),
      );

  it("never answers with a fault of ours, and every refusal has the one shape", {
    timeout: 240_000,
  }, async () => {
    const { operations, components } = await listed();
    for (const { id, method, path, body } of operations) {
      if (id === "signOut" || id === "signIn") continue;
      const payload =
        body === null
          ? fc.constant(undefined)
          : fc.oneof(
              { weight: 3, arbitrary: valueFor(body, components) },
              { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
            );
      await fc.assert(
        fc.asyncProperty(
          pathFor(path),
          payload,
          fc.constantFrom("", "?date=2026-02-30", "?q=%25_'&limit=3", "?after=nonsense", "?size=small"),
          async (url, given, query) => {
            const answer = await depot.app.inject({
              method: method as "GET",
              url: `${url}${query}`,
              headers: {
                cookie: depot.cookie("manager"),
                ...(given === undefined ? {} : { "content-type": "application/json" }),
              },
              ...(given === undefined ? {} : { payload: JSON.stringify(given) }),
            });
            expect(
              answer.statusCode,
              `${method} ${url}${query} ${JSON.stringify(given)}: ${answer.body}`,
            ).toBeLessThan(500);
            if (answer.statusCode >= 400)
              expect(answer.json().error).toMatchObject({
                code: expect.any(String),
                message: expect.any(String),
                problems: expect.any(Array),
              });
          },
        ),
        { numRuns: 12, seed: 20260701, endOnFailure: true },
      );
    }
  });
});
