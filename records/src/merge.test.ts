import { describe, expect, test } from "vitest";
import type { JsonObject } from "./json.ts";
import { mergeRecords } from "./merge.ts";
import { eraseRecord, makeRecord } from "./record.ts";
import { reading } from "./walks-for-tests.ts";

let minute = 0;
const made = (change: { kind?: "reading" | "count" | "look"; hireId?: string; content?: JsonObject }) => {
  const { hireId, content, kind } = change;
  const plain = reading("a", ++minute, "odometer", 41_234);
  return makeRecord(
    {
      ...plain,
      ...(kind === undefined ? {} : { kind }),
      ...(hireId === undefined ? {} : { refs: { hireId } }),
      content: { ...plain.content, ...content },
    },
    null,
  );
};

describe("readings of one thing", () => {
  test("out, back and on the road are three things, and so are those of two hires", () => {
    const records = [
      made({ content: { direction: "out", value: 1 } }),
      made({ content: { direction: "back", value: 2 } }),
      made({ content: { value: 3, direction: null } }),
      made({ hireId: "other", content: { direction: "out", value: 4 } }),
    ];
    const { readings, questions } = mergeRecords(records);
    expect(questions).toEqual([]);
    expect(
      new Set(readings.map(({ hireId, direction, holds }) => `${hireId} ${direction} ${holds?.id}`)),
    ).toEqual(
      new Set(
        records.map(({ id, refs, content }) => `${refs.hireId ?? ""} ${content.direction ?? ""} ${id}`),
      ),
    );
  });

  test("two that agree are no question, and the later one holds; the same number in another unit is one", () => {
    const first = made({ content: { unit: "km" } });
    const again = made({ content: { unit: "km" } });
    expect(mergeRecords([again, first]).readings).toMatchObject([{ holds: { id: again.id } }]);
    const miles = made({ content: { unit: "mi" } });
    expect(mergeRecords([first, miles]).questions).toMatchObject([
      { readings: [{ id: first.id }, { id: miles.id }] },
    ]);
  });

  test("what was counted goes by what was found, not by the value of a reading", () => {
    const two = made({ kind: "count", content: { about: "cups", found: 2, value: 1 } });
    const three = made({ kind: "count", content: { about: "cups", found: 3, value: 1 } });
    expect(mergeRecords([two, three]).questions).toMatchObject([{ about: "cups" }]);
    const same = made({ kind: "count", content: { about: "cups", found: 2, value: 9 } });
    expect(mergeRecords([two, same]).questions).toEqual([]);
  });

  test("a look is no reading, and an erased reading says nothing any more", () => {
    const look = made({ kind: "look", content: { saw: "clean" } });
    const gone = made({ content: { value: 9 } });
    const kept = made({ content: { value: 8 } });
    const records = [look, eraseRecord(gone, "2027-01-01T00:00:00.000Z"), kept];
    const merged = mergeRecords(records);
    expect(merged.readings).toMatchObject([{ holds: { id: kept.id } }]);
    expect(merged.records).toEqual(records);
  });
});
