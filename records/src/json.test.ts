import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalJson } from "./json.ts";

const published = JSON.parse(readFileSync(new URL("../published/rfc8785.json", import.meta.url), "utf8"));

function double(hex: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
}

describe("canonical JSON as RFC 8785 prints it", () => {
  test("all of its numbers are there", () => {
    expect(published.numbers).toHaveLength(24);
    expect(published.refusedNumbers).toHaveLength(2);
  });

  test.each(published.numbers as { ieee754: string; json: string }[])(
    "$ieee754 is written $json",
    ({ ieee754, json }) => {
      expect(canonicalJson(double(ieee754))).toBe(json);
    },
  );

  test.each(published.refusedNumbers as string[])("%s is refused, with the field's name", (hex) => {
    expect(() => canonicalJson({ litres: double(hex) })).toThrow(/^litres: /);
  });

  test("the sample comes out byte for byte", () => {
    const bytes = Buffer.from(canonicalJson(JSON.parse(published.sample.json)), "utf8");
    expect(bytes.toString("hex")).toBe(published.sample.canonicalUtf8Hex);
  });

  test("names are sorted by UTF-16 code units", () => {
    const written = canonicalJson(JSON.parse(published.sorting.json));
    const order = [...published.sorting.order].map((value: string) => written.indexOf(`"${value}"`));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(Math.min(...order)).toBeGreaterThan(0);
  });
});

describe("canonical JSON", () => {
  test("does not depend on the order of fields, and reads back the same", () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const written = canonicalJson(value);
        expect(canonicalJson(JSON.parse(written))).toBe(written);
        if (value !== null && typeof value === "object" && !Array.isArray(value)) {
          const turned = Object.fromEntries(Object.entries(value).reverse());
          expect(canonicalJson(turned)).toBe(written);
        }
      }),
    );
  });

  test.each([
    ["undefined", { a: { b: undefined } }, /^a\.b: /],
    ["half a surrogate pair", { a: ["\ud800"] }, /^a\.0: /],
    ["a date", { a: new Date(0) }, /^a: /],
    ["a function", { a: () => 1 }, /^a: /],
    ["a big integer", { a: 1n }, /^a: /],
  ])("%s is refused, never left out in silence", (_name, value, message) => {
    expect(() => canonicalJson(value)).toThrow(message);
  });

  test("what is nested too deep is refused", () => {
    let value: unknown = 1;
    for (let n = 0; n < 40; n++) value = [value];
    expect(() => canonicalJson(value)).toThrow(/levels/);
  });
});
