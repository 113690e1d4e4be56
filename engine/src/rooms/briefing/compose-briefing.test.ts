import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseWith } from "../../base/bad-input.ts";
import { MOMENTS } from "../../systems/contract.ts";
import { parseVehicle } from "../../vehicle/parse.ts";
import { vehicleFacts } from "./choose-cards.ts";
import { composeBriefing } from "./compose-briefing.ts";
import { fillSlot } from "./fill-slot.ts";
import { type BriefingInput, briefingInputSchema } from "./types.ts";

const vehicle = parseVehicle(
  JSON.parse(readFileSync(new URL("../../../../examples/pv2.json", import.meta.url), "utf8")),
);
const withPets = parseVehicle({
  ...vehicle,
  systems: vehicle.systems.map((fitted) =>
    fitted.kind === "seatsBelts" ? { ...fitted, spec: { ...fitted.spec, petsAllowed: true } } : fitted,
  ),
});
const may: BriefingInput = {
  vehicle,
  situation: { country: "GB", nightsOffHookUp: 2, coldestNightC: 6, firstTime: true, people: 2, children: 0 },
  slotMinutes: 75,
};
const ids = (cards: readonly { card: { id: string } }[]) => cards.map(({ card }) => card.id);

describe("the briefing of the panel van for two first-timers in May", () => {
  const { result, findings } = composeBriefing(may);

  it("fits the slot", () => {
    expect(findings).toEqual([]);
    expect(result.minutes.value).toBeLessThanOrEqual(75);
    expect(result.minutes.value).toBeGreaterThan(60);
  });

  it("shows what must be shown, by moment", () => {
    expect(ids(result.demonstrate)).toEqual(
      expect.arrayContaining(["lpg.smell", "hookUp.plugIn", "cab.height"]),
    );
    const moments = result.demonstrate.map(({ card }) => MOMENTS.indexOf(card.moment));
    expect(moments).toEqual([...moments].sort((a, b) => a - b));
  });

  it("tells no winter and no foreign cards", () => {
    const all = ids([...result.demonstrate, ...result.reading]);
    expect(all).not.toContain("freshWater.frost");
    expect(all).not.toContain("hookUp.adaptor");
  });

  it("weighs chance by cost", () => {
    const { risk } = result.demonstrate.find(({ card }) => card.id === "awning.wind")!;
    expect(risk).toMatchObject({ value: 0.2 * 120_000, unit: "pence", formula: "briefing.risk" });
  });
});

describe("a briefing", () => {
  it("says nothing of dogs to a party that brings none, and does where that is not known", () => {
    const told = (dogs?: number) => {
      const { result } = composeBriefing({
        ...may,
        vehicle: withPets,
        situation: { ...may.situation, ...(dogs === undefined ? {} : { dogs }) },
      });
      return ids([...result.demonstrate, ...result.reading]).includes("seatsBelts.pets");
    };
    expect([told(0), told(1), told()]).toEqual([false, true, true]);
  });

  it("adds frost cards for the Cairngorms at New Year", () => {
    const winter = composeBriefing({
      ...may,
      situation: { ...may.situation, coldestNightC: -8, nightsOffHookUp: 4 },
    });
    const all = ids([...winter.result.demonstrate, ...winter.result.reading]);
    expect(all).toEqual(
      expect.arrayContaining(["freshWater.frost", "wasteWater.frost", "hotWater.frostValve"]),
    );
  });

  it("sends what is known already as reading before anything else", () => {
    const known = ["awning.putOut"];
    const { result } = composeBriefing({ ...may, slotMinutes: 60, known });
    const sent = result.reading.find(({ card }) => card.id === "awning.putOut");
    expect(sent?.why).toBe("alreadyKnown");
  });

  it("says so when the slot is too short for what must be shown, and shows it all the same", () => {
    const { result, findings } = composeBriefing({ ...may, slotMinutes: 10 });
    expect(findings).toMatchObject([
      { code: "briefing.slotTooShort", severity: "condition", basis: "safety" },
    ]);
    expect(result.demonstrate.every(({ card }) => card.must)).toBe(true);
    expect(result.minutes.value).toBeGreaterThan(10);
  });

  it("loses no card between demonstration and reading, whatever the slot, and a longer slot leaves no more risk", () => {
    const left = (slotMinutes: number) =>
      composeBriefing({ ...may, slotMinutes }).result.reading.reduce((sum, { risk }) => sum + risk.value, 0);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 240 }), fc.integer({ min: 0, max: 60 }), (slot, more) => {
        const { result } = composeBriefing({ ...may, slotMinutes: slot / 2 });
        const all = ids([...result.demonstrate, ...result.reading]);
        expect(new Set(all).size).toBe(all.length);
        expect(all.length).toBe(
          ids(composeBriefing(may).result.demonstrate).length + composeBriefing(may).result.reading.length,
        );
        expect(left(slot / 2 + more)).toBeLessThanOrEqual(left(slot / 2) + 1e-6);
      }),
      { numRuns: 40 },
    );
  });

  it("of two cards worth the same never shows the longer and leaves the shorter to be read", () => {
    for (let halfMinutes = 0; halfMinutes <= 240; halfMinutes++) {
      const { result } = composeBriefing({ ...may, slotMinutes: halfMinutes / 2 });
      for (const shown of result.demonstrate.filter(({ card }) => !card.must))
        for (const read of result.reading.filter(({ risk }) => risk.value === shown.risk.value))
          expect(shown.minutes.value, `${shown.card.id}, ${read.card.id}`).toBeLessThanOrEqual(
            read.minutes.value,
          );
    }
  });

  it("shows the shorter of two that are worth the same where only one of them fits", () => {
    const windows = vehicle.systems.filter(({ kind }) => kind === "windows");
    const of = (slotMinutes: number) =>
      composeBriefing({ ...may, vehicle: { ...vehicle, systems: windows }, slotMinutes }).result;
    const all = of(60);
    expect(all.reading).toEqual([]);
    const worth = (id: string) => {
      const { risk, minutes } = all.demonstrate.find(({ card }) => card.id === id)!;
      return [risk.value, minutes.value];
    };
    expect([worth("windows.hinged"), worth("windows.rooflightsShut")]).toEqual([
      [7200, 1.5],
      [7200, 1],
    ]);
    expect(ids(of(all.minutes.value - 1).reading)).toEqual(["windows.hinged"]);
  });

  it("sends the greatest risk first, and what is worth the same by its id, so that two makings agree", () => {
    const { reading } = composeBriefing({ ...may, slotMinutes: 60 }).result;
    expect(reading.length).toBeGreaterThan(20);
    const told = reading.map(({ card, risk }) => [-risk.value, card.id] as const);
    expect(told).toEqual(told.toSorted(([a, x], [b, y]) => a - b || (x < y ? -1 : 1)));
    expect(new Set(reading.map(({ risk }) => risk.value)).size).toBeLessThan(reading.length);
  });

  it("shows within a moment first what must be shown, then the greatest risk", () => {
    const { demonstrate } = composeBriefing(may).result;
    const told = demonstrate.map(
      ({ card, risk }) => [MOMENTS.indexOf(card.moment), card.must ? 0 : 1, -risk.value, card.id] as const,
    );
    expect(told).toEqual(
      told.toSorted((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2] || (a[3] < b[3] ? -1 : 1)),
    );
  });

  it("names the field of a bad input", () => {
    expect(() => parseWith(briefingInputSchema, { ...may, slotMinutes: -5 })).toThrow("slotMinutes");
    expect(() =>
      parseWith(briefingInputSchema, { ...may, situation: { ...may.situation, country: "Scotland" } }),
    ).toThrow("situation.country");
  });
});

describe("filling a slot", () => {
  it("agrees with trying every set", () => {
    const card = fc.record({
      minutes: fc.integer({ min: 1, max: 12 }).map((k) => k / 2),
      pence: fc.integer({ min: 1, max: 900 }),
    });
    fc.assert(
      fc.property(fc.array(card, { maxLength: 9 }), fc.integer({ min: 0, max: 40 }), (cards, room) => {
        const worth = (picked: readonly number[]) => picked.reduce((sum, k) => sum + cards[k]!.pence, 0);
        const time = (picked: readonly number[]) => picked.reduce((sum, k) => sum + cards[k]!.minutes, 0);
        let best = 0;
        for (let set = 0; set < 2 ** cards.length; set++) {
          const picked = cards.map((_, k) => k).filter((k) => (set >> k) & 1);
          if (time(picked) <= room / 2) best = Math.max(best, worth(picked));
        }
        const found = fillSlot(cards, room / 2);
        expect(time(found)).toBeLessThanOrEqual(room / 2);
        expect(worth(found)).toBe(best);
      }),
    );
  });
});

describe("the height that is read out", () => {
  it.each([
    [2.89, 2.89, 9, 6],
    [3.05, 3.05, 10, 1],
    [3.048, 3.05, 10, 0],
    [2.7441, 2.75, 9, 1],
  ])("%f m is never rounded down", (heightM, metres, feet, inches) => {
    const facts = vehicleFacts({ ...vehicle.dimensions, heightM });
    expect(facts).toMatchObject({
      vehicleHeightM: metres,
      vehicleHeightFeet: feet,
      vehicleHeightInches: inches,
    });
  });
});
