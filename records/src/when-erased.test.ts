import { describe, expect, test } from "vitest";
import type { JsonObject } from "./json.ts";
import { type DepotRecord, eraseRecord, makeRecord } from "./record.ts";
import { reading, signatureOver } from "./walks-for-tests.ts";
import { photographsWhenErased, whenErased } from "./when-erased.ts";

const NAMES = ["Ada Invented", "ada@example.org", "Li"];
const hash = (letter: string) => letter.repeat(64);
let minute = 0;
const made = (kind: DepotRecord["kind"], content: JsonObject) =>
  makeRecord({ ...reading("a", ++minute, "odometer", 1), kind, content }, null);
const look = (saw: string) => made("look", { about: "cab", saw });

describe("a record of an erased person's hire", () => {
  test("goes at once where the person speaks or signs, named in it or not", () => {
    const read = made("reading", { about: "odometer", value: 1 });
    expect(whenErased(makeRecord(signatureOver([read], "a"), null), [])).toBe("now");
    expect(whenErased(made("reply", { about: "line", answer: "accept", text: "" }), NAMES)).toBe("now");
    expect(whenErased(made("note", { text: "rang back" }), NAMES)).toBe("now");
  });

  test("stays where it names nobody, and waits with the vehicle's photographs where it does", () => {
    expect(whenErased(look("clean"), NAMES)).toBe("stays");
    expect(whenErased(look("ADA INVENTED was shown it"), NAMES)).toBe("later");
    expect(whenErased(look("write to ada@example.org"), NAMES)).toBe("later");
    expect(
      whenErased(made("help", { about: "x", outcome: "call", answers: [], who: "Ada Invented" }), NAMES),
    ).toBe("now");
  });

  test("a text too short to be a name is not looked for, and one with quotes in it is found as JSON holds it", () => {
    expect(whenErased(look("a little rust"), NAMES)).toBe("stays");
    expect(whenErased(look("a rust"), ["rust"])).toBe("later");
    expect(whenErased(look('shown to Ada "Addy" Invented'), [' Ada "Addy" Invented '])).toBe("later");
    expect(whenErased(look("clean"), ["   "])).toBe("stays");
  });

  test("that is erased already has nothing left to go", () => {
    expect(whenErased(eraseRecord(made("note", { text: "x" }), "2027-01-01T00:00:00.000Z"), NAMES)).toBe(
      "stays",
    );
  });
});

describe("photographs that records of an erased person's hire name", () => {
  const mark = (...photographs: string[]) => made("mark", { about: "cab", photographs });
  const shot = (about: string, sha256: string) => made("photograph", { about, sha256 });
  const reply = (...photographs: string[]) =>
    made("reply", { about: "line", answer: "dispute", text: "", photographs });

  test("of the vehicle wait, what was sent with a reply goes, and stays where the vehicle names it too", () => {
    expect(
      photographsWhenErased([mark(hash("a")), shot("step", hash("b")), reply(hash("a"), hash("c"))]),
    ).toEqual({
      now: [hash("c")],
      later: [hash("a"), hash("b")],
    });
  });

  test("of signed sheets go at once, whichever record names them: photograph, signature or late entry", () => {
    const read = made("reading", { about: "odometer", value: 1 });
    const signature = signatureOver([read], "a");
    const onPaper = { sha256: hash("d"), at: "2026-07-04T14:05" };
    const late = { doneAt: "2026-07-04T14:05", doneBy: "Yo Yard", sheets: [hash("e")] };
    const records = [
      shot("sheet", hash("f")),
      makeRecord({ ...signature, content: { ...signature.content, onPaper } }, null),
      made("walkStarted", { direction: "out", late }),
      mark(hash("e"), hash("f"), hash("a")),
      reply(hash("f")),
    ];
    const { now, later } = photographsWhenErased(records);
    expect([...now].sort()).toEqual([hash("d"), hash("e"), hash("f")]);
    expect(later).toEqual([hash("a")]);
  });

  test("each is named once, and what is no hash is no photograph", () => {
    const odd = made("look", { about: "cab", saw: "x", photographs: [7, "nothing", hash("a")] });
    expect(photographsWhenErased([odd, mark(hash("a"))])).toEqual({ now: [], later: [hash("a")] });
  });
});
