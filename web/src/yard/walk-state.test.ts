import type { WalkRoundCheck, WalkRoundStep } from "@setfair/engine";
import { type DepotRecord, type JsonObject, makeRecord, type RecordKind } from "@setfair/records";
import { describe, expect, it } from "vitest";
import { missingChecks, nextNeeded, photographsOf, readWalk, stillNeeds } from "./walk-state.ts";

const chain = "h1.out";
function records(...list: readonly [RecordKind, JsonObject][]): DepotRecord[] {
  const made: DepotRecord[] = [];
  for (const [kind, content] of list) {
    const last = made.at(-1);
    made.push(
      makeRecord(
        {
          deviceId: "d",
          deviceTime: "2026-07-03T10:00:00.000Z",
          kind,
          refs: { hireId: "h1" },
          chain,
          content,
        },
        last === undefined ? null : { seq: last.seq, hash: last.hash },
      ),
    );
  }
  return made;
}
const check = (id: string, more: Partial<WalkRoundCheck> = {}): WalkRoundCheck => ({
  id,
  when: ["out", "back"],
  view: "nearside",
  kind: "look",
  photograph: false,
  systemId: "s",
  systemKind: "awning",
  ...more,
});
const awning = check("awning.fullyOut", { part: "awning.cassette", photograph: true });
const body = check("cab.bodyNearside", { photograph: true });
const volts = check("leisureBattery.restVolts", { kind: "reading" });
const step: WalkRoundStep = { view: "nearside", checks: [body, awning, volts] };
const hash = (digit: string) => digit.repeat(64);
const picture = (about: string, digit: string): [RecordKind, JsonObject] => [
  "photograph",
  { about, sha256: hash(digit) },
];

describe("where a walk-round stands", () => {
  it("asks for the photographs and numbers of a side in their order, then for nothing", () => {
    const taken: [RecordKind, JsonObject][] = [];
    const now = () => readWalk(records(...taken));
    expect(nextNeeded(now(), step)?.id).toBe(body.id);
    taken.push(picture("view.nearside", "a"));
    expect(nextNeeded(now(), step)?.id).toBe(awning.id);
    taken.push(picture("awning.cassette", "b"));
    expect(stillNeeds(now(), volts)).toBe("reading");
    taken.push(["reading", { about: volts.id, value: 12.6, unit: "V" }]);
    expect(nextNeeded(now(), step)).toBeUndefined();
  });

  it("asks nobody to photograph what was done on paper, and still asks for its numbers", () => {
    const late = { doneAt: "2026-07-02T16:40", doneBy: "Nell", sheets: [hash("c")] };
    const walk = readWalk(records(["walkStarted", { direction: "out", late }]));
    expect(walk.late).toEqual(late);
    expect(nextNeeded(walk, step)?.id).toBe(volts.id);
  });

  it("takes a photograph of the whole side for what has no part of its own, and only for that", () => {
    const walk = readWalk(records(picture("view.nearside", "a")));
    expect(photographsOf(walk, body)).toEqual([hash("a")]);
    expect(photographsOf(walk, awning)).toEqual([]);
  });

  it("lets too wet or dirty stand in for a photograph", () => {
    const walk = readWalk(records(["look", { about: awning.id, saw: "tooWetOrDirty" }]));
    expect(stillNeeds(walk, awning)).toBeNull();
  });

  it("shows the latest answer and keeps the earlier one in the records", () => {
    const both = records(
      ["reading", { about: volts.id, value: 12.1 }],
      ["reading", { about: volts.id, value: 12.6 }],
    );
    expect(readWalk(both).answers.get(volts.id)?.value).toBe(12.6);
    expect(both).toHaveLength(2);
  });

  it("lists what nobody answered, on any side", () => {
    const walk = readWalk(records(picture("view.nearside", "a"), ["look", { about: body.id, saw: "same" }]));
    expect(missingChecks(walk, [step]).map((one) => one.check.id)).toEqual([awning.id, volts.id]);
  });

  it("reads marks, what was shown, and who signed for what", () => {
    const walk = readWalk(
      records(
        [
          "mark",
          {
            about: "awning.cassette",
            part: "awning.cassette",
            view: "nearside",
            xShare: 0.25,
            yShare: 0.5,
            markKind: "dent",
            photographs: [hash("c")],
          },
        ],
        ["briefed", { about: "lpg.openShut", how: "ownHands" }],
        ["walkFinished", { direction: "out" }],
      ),
    );
    expect(walk.marks[0]).toMatchObject({
      xShare: 0.25,
      markKind: "dent",
      sizeMm: null,
      photographs: [hash("c")],
    });
    expect(walk.briefed.get("lpg.openShut")).toBe("ownHands");
    expect(walk.finished).toBe(true);
  });

  it("passes over a record that was erased", () => {
    const [record] = records(["reading", { about: volts.id, value: 12.6 }]);
    const { salt: _salt, content: _content, ...rest } = record!;
    expect(readWalk([{ ...rest, erasedAt: "2026-08-01T00:00:00.000Z" }]).answers.size).toBe(0);
  });
});
