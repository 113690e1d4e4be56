import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { canonicalJson } from "./json.ts";
import { checkRecord, eraseRecord, makeRecord } from "./record.ts";
import { reading, signatureOver } from "./walks-for-tests.ts";

const made = () => makeRecord(reading("a", 1, "fuel", 0.5), null);

describe("making a record", () => {
  test("the hash is SHA-256 of the raw salt and the canonical JSON of all other fields", () => {
    const record = made();
    const { salt, hash, ...rest } = record;
    const expected = createHash("sha256")
      .update(Buffer.concat([Buffer.from(salt, "hex"), Buffer.from(canonicalJson(rest), "utf8")]))
      .digest("hex");
    expect(hash).toBe(expected);
    expect(checkRecord(JSON.parse(JSON.stringify(record)))).toMatchObject({ problems: [] });
  });

  test("the same said twice has another id, salt and hash", () => {
    const [one, two] = [made(), made()];
    expect(one.id).not.toBe(two.id);
    expect(one.salt).not.toBe(two.salt);
    expect(one.hash).not.toBe(two.hash);
  });

  test("the next record names the one before it", () => {
    const first = made();
    const second = makeRecord(reading("a", 2, "fuel", 0.4), first);
    expect(second).toMatchObject({ seq: 2, prev: first.hash });
  });

  test("what cannot be kept is refused at once, with the field's name", () => {
    expect(() => makeRecord({ ...reading("a", 1, "fuel", Number.NaN) }, null)).toThrow(/^content\.value: /);
    expect(() => makeRecord({ ...reading("a", 1, "fuel", 1), deviceTime: "noon" }, null)).toThrow(
      /^deviceTime: /,
    );
    expect(() => makeRecord({ ...reading("a", 1, "", 1) }, null)).toThrow(/^content\.about: /);
  });

  test("a signature without a stroke or without the text shown is no signature", () => {
    const signature = signatureOver([made()], "a");
    expect(() => makeRecord({ ...signature, content: { ...signature.content, strokes: [] } }, null)).toThrow(
      /strokes/,
    );
    expect(() =>
      makeRecord(
        { ...signature, content: { ...signature.content, shown: { text: "", language: "en" } } },
        null,
      ),
    ).toThrow(/shown\.text/);
  });

  test("a signature with a pen names the photograph of its sheet and when it was signed", () => {
    const signature = signatureOver([made()], "a");
    const onPaper = { sha256: "c".repeat(64), at: "2026-07-02T16:40" };
    const signed = (paper: object) =>
      makeRecord(
        { ...signature, content: { ...signature.content, strokes: [], onPaper: paper } as never },
        null,
      );
    expect(signed(onPaper).content).toMatchObject({ onPaper });
    expect(() => signed({ ...onPaper, at: "yesterday" })).toThrow(/onPaper\.at/);
    expect(() => signed({ at: onPaper.at })).toThrow(/onPaper\.sha256/);
  });

  test("a frozen result carries what it was made from", () => {
    const content = {
      room: "load",
      result: { rearKg: 1_900 },
      inputs: { vehicle: "a".repeat(64), load: "b".repeat(64) },
      versions: { vehicle: "PV2@2026-01-01", rules: "2026-06-30", terms: null, engine: "0.1.0" },
    };
    expect(makeRecord({ ...reading("a", 1, "x", 1), kind: "frozen", content }, null).content).toEqual(
      content,
    );
    const { versions: _versions, ...without } = content;
    expect(() => makeRecord({ ...reading("a", 1, "x", 1), kind: "frozen", content: without }, null)).toThrow(
      /content\.versions/,
    );
  });
});

describe("checking a record that came from elsewhere", () => {
  test.each([
    [null],
    ["text"],
    [42],
    [[]],
    [{}],
    [{ ...made(), extra: 1 }],
    [{ ...made(), refs: { name: "Sam" } }],
    [eraseRecord(made(), "2027-01-01T00:00:00Z")],
  ])("%j is refused with a reason", (value) => {
    const { record, problems } = checkRecord(value);
    expect(record).toBeNull();
    expect(problems.length).toBeGreaterThan(0);
  });

  test("erasing takes salt and content together and nothing else, and twice is once", () => {
    const record = made();
    const erased = eraseRecord(record, "2027-01-01T00:00:00Z");
    const { salt: _salt, content: _content, ...rest } = record;
    expect(erased).toEqual({ ...rest, erasedAt: "2027-01-01T00:00:00Z" });
    expect(eraseRecord(erased, "2028-01-01T00:00:00Z")).toEqual(erased);
  });
});
