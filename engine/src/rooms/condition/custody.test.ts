import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { HOLDERS, type KeysPassed, readCustody } from "./custody.ts";

const passed = (at: string, holder: KeysPassed["holder"], who: string): KeysPassed => ({
  at,
  holder,
  who,
  note: null,
  hireId: null,
  recordId: null,
});

describe("custody of the keys", () => {
  it("says who had them, from when until when, and what was recorded meanwhile", () => {
    const lines = readCustody(
      [
        passed("2026-07-06T09:00:00.000Z", "keySafe", "drop box"),
        passed("2026-07-03T11:00:00.000Z", "hirer", "Ingrid Example"),
        passed("2026-07-06T09:40:00.000Z", "depot", "Yo Yard"),
      ],
      [
        { at: "2026-07-06T09:45:00.000Z", kind: "mark" },
        { at: "2026-07-06T09:45:30.000Z", kind: "photograph" },
        { at: "2026-07-01T09:00:00.000Z", kind: "mark" },
      ],
    );
    expect(lines.map(({ who, until, marks, photographs }) => [who, until, marks, photographs])).toEqual([
      ["Ingrid Example", "2026-07-06T09:00:00.000Z", 0, 0],
      ["drop box", "2026-07-06T09:40:00.000Z", 0, 0],
      ["Yo Yard", null, 1, 1],
    ]);
  });

  it("leaves no gap and counts nothing twice, whatever the order of entry", () => {
    const at = fc.integer({ min: 0, max: 50 }).map((minute) => new Date(minute * 60_000).toISOString());
    fc.assert(
      fc.property(fc.uniqueArray(at, { maxLength: 8 }), fc.array(at, { maxLength: 12 }), (times, seen) => {
        const all = times.map((time, k) => passed(time, HOLDERS[k % HOLDERS.length] ?? "depot", `p${k}`));
        const marks = seen.map((time) => ({ at: time, kind: "mark" as const }));
        const lines = readCustody(all, marks);
        expect(readCustody(all.toReversed(), marks)).toEqual(lines);
        lines.forEach(({ until }, k) => {
          expect(until).toBe(lines[k + 1]?.at ?? null);
        });
        const first = lines[0]?.at;
        const counted = lines.reduce((sum, line) => sum + line.marks, 0);
        expect(counted).toBe(first === undefined ? 0 : seen.filter((time) => time >= first).length);
      }),
    );
  });
});
