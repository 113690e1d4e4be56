import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { symptomsOf } from "../src/rooms/diagnosis/symptoms-of.ts";
import { applies, type Symptom } from "../src/systems/contract.ts";
import { SYSTEM_KINDS, systemModule } from "../src/systems/registry.ts";
import { anySystems, sampleSpecs } from "./arbitrary.ts";
import { TEXTS } from "./words.ts";

/** Every symptom that any spec of any kind has, by kind. */
const SYMPTOMS: readonly (readonly [kind: string, symptoms: readonly Symptom[]])[] = SYSTEM_KINDS.map(
  (kind) => {
    const { faults } = systemModule(kind);
    const found = applies(faults) ? sampleSpecs(kind, 80).flatMap((spec) => faults.symptoms(spec)) : [];
    return [kind, [...new Map(found.map((symptom) => [JSON.stringify(symptom), symptom])).values()]];
  },
);
const ALL = SYMPTOMS.flatMap(([, symptoms]) => symptoms);

/** What holds of a symptom whether or not other things are fitted. */
function expectSound({ id, dangerous, causes, checks }: Symptom): void {
  if (dangerous) {
    expect(checks, id).toEqual([]);
    return;
  }
  const byHirer = checks.filter(({ danger }) => danger < 2);
  for (const { id: cause, call } of causes) {
    const seen = byHirer.some((check) => check.causes.includes(cause));
    expect(
      seen || call === true,
      `${id}: nothing a hirer may do shows ${cause}, and it is not marked call`,
    ).toBe(true);
  }
  // what needs trained hands stands last, and nothing a hirer may do waits for it
  const firstTrained = checks.findIndex(({ danger }) => danger === 2);
  if (firstTrained >= 0)
    expect(
      checks.slice(firstTrained).every(({ danger }) => danger === 2),
      id,
    ).toBe(true);
  const trained = new Set(checks.filter(({ danger }) => danger === 2).map((check) => check.id));
  for (const { after } of byHirer)
    expect(
      after.some((first) => trained.has(first)),
      id,
    ).toBe(false);
  if (byHirer.length === 0)
    expect(
      causes.every(({ call }) => call === true),
      id,
    ).toBe(true);
}

describe.each(SYMPTOMS)("the faults of %s", (_kind, symptoms) => {
  it("lead every cause to a check that a hirer may do, or to a call", () => {
    symptoms.forEach(expectSound);
  });
});

describe("the faults of all systems", () => {
  it("of the control panel are told nowhere else: it only shows what is the fault of another", () => {
    const told = (kind: string) =>
      SYMPTOMS.filter(([of]) => of === kind).flatMap(([, symptoms]) =>
        symptoms.flatMap(({ id, causes }) => [
          TEXTS.get(`symptom.${id}`),
          ...causes.map((cause) => TEXTS.get(`cause.${cause.id}`)),
        ]),
      );
    const byPanel = new Set(told("controlPanel"));
    expect(byPanel.size).toBeGreaterThan(0);
    for (const kind of ["leisureBattery", "freshWater", "wasteWater", "lights"])
      for (const text of told(kind)) expect(byPanel).not.toContain(text);
  });

  it("stay sound on any vehicle, with what is not fitted left out", () => {
    fc.assert(
      fc.property(anySystems, (systems) => {
        const fitted = new Set<string>(systems.map(({ kind }) => kind));
        for (const { symptom } of symptomsOf({ systems: [...systems] })) {
          expectSound(symptom);
          expect(symptom.causes.length).toBeGreaterThan(0);
          for (const { mentions } of [...symptom.causes, ...symptom.checks])
            for (const mention of mentions ?? []) expect(fitted).toContain(mention);
          for (const { after } of symptom.checks)
            for (const first of after) expect(symptom.checks.map(({ id }) => id)).toContain(first);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("lead on only to faults that there are, and never round in a circle", () => {
    const leads = new Map<string, Set<string>>();
    for (const { id, causes } of ALL)
      for (const { leadsTo } of causes)
        if (leadsTo !== undefined) leads.set(id, (leads.get(id) ?? new Set()).add(leadsTo));
    const known = new Set(ALL.map(({ id }) => id));
    for (const targets of leads.values()) for (const target of targets) expect(known).toContain(target);
    const walk = (id: string, path: readonly string[]): void => {
      expect(path, `${[...path, id].join(" → ")}`).not.toContain(id);
      for (const next of leads.get(id) ?? []) walk(next, [...path, id]);
    };
    for (const id of leads.keys()) walk(id, []);
  });
});

/** What hirers ring about, with the symptom that answers; on a vehicle with every kind fitted. */
const CALLS = [
  ["no mains", "hookUp.noMains"],
  ["it trips", "hookUp.tripsAgain"],
  ["no heat", "heating.noHeat"],
  ["water lost overnight", "hotWater.lostOvernight"],
  ["no hot water", "hotWater.cold"],
  ["fridge warm", "fridge.warm"],
  ["nothing lights", "lpg.nothingLights"],
  ["flat battery", "leisureBattery.flatMornings"],
  ["everything dead", "leisureBattery.allDead"],
  ["the pump runs but no water comes", "freshWater.nothingComes"],
  ["the pump is dead", "freshWater.pumpSilent"],
  ["the waste will not empty", "wasteWater.willNotEmpty"],
  ["the cassette is stuck", "cassetteToilet.willNotComeOut"],
  ["the step is stuck", "step.stuckOut"],
  ["the awning will not close", "awning.willNotClose"],
  ["a blind is stuck", "windows.blindStuck"],
  ["no television", "television.noPicture"],
  ["exhaust fluid light", "def.lightOn"],
  ["tyre pressure warning", "tyres.warning"],
] as const;
const STOPS = [
  "lpg.smell",
  "alarms.carbonMonoxideSounds",
  "alarms.smokeSounds",
  "heating.exhaustInside",
  "hookUp.tingles",
  "hookUp.plugHot",
  "fridge.ammonia",
  "fuel.wrongFuel",
  "freshWater.fuelInside",
  "def.wrongTank",
  "cab.redLight",
  "tyres.flat",
  "tyres.shakes",
  "awning.takenByWind",
];
const needed: Readonly<Record<string, Record<string, unknown>>> = {
  leisureBattery: { chemistry: "agm", ratedAh: 95 },
  lpg: {
    arrangement: "exchange",
    cylinders: 2,
    kgEach: 6,
    tareKgEach: 8,
    hoseDate: "2024-02-01",
    impactShutoff: true,
  },
  heating: { source: "gasElectric", frostValveC: 3 },
  hotWater: { source: "gasElectric", frostValveC: 3 },
  fridge: { type: "absorption" },
};

describe("what hirers ring about", () => {
  const kept = [
    "television",
    "step",
    "awning",
    "windows",
    "def",
    "tyres",
    "fuel",
    "cab",
    "alarms",
    "charging",
  ];
  const other = ["hookUp", "freshWater", "wasteWater", "cassetteToilet", "cooking", "lights", "solar"];
  const systems = [...Object.keys(needed), ...kept, ...other].map((kind) => {
    const spec = needed[kind] ?? firstSpec(kind);
    return { id: kind, kind, spec };
  });
  const symptoms = symptomsOf({ systems });

  it.each(CALLS)("%s: several causes, and several things to try or look at", (_call, id) => {
    const on = symptoms.find(({ symptom }) => symptom.id === id);
    expect(on, id).toBeDefined();
    const { causes, checks, dangerous } = on!.symptom;
    expect(dangerous).toBe(false);
    expect(causes.length).toBeGreaterThanOrEqual(3);
    expect(checks.filter(({ danger }) => danger < 2).length).toBeGreaterThanOrEqual(2);
    expect(checks[0]!.danger).toBe(0);
  });

  it.each(STOPS)("%s: stop and call at once", (id) => {
    const on = symptoms.find(({ symptom }) => symptom.id === id);
    expect(on?.symptom).toMatchObject({ dangerous: true, checks: [] });
  });
});

/** What must be given taken from a sample; the rest is left to the kind's own defaults. */
function firstSpec(kind: string): Record<string, unknown> {
  const known = SYSTEM_KINDS.find((one) => one === kind)!;
  const sample = sampleSpecs(known, 1)[0]!;
  const given = Object.entries(systemModule(known).spec.fields).filter(
    ([, { default: fallback }]) => fallback === undefined,
  );
  return Object.fromEntries(given.map(([name]) => [name, sample[name]]));
}
