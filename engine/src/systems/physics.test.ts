import { describe, expect, it } from "vitest";
import { leadAcidCapacityChangePct, restVoltageV, runTimeH } from "../formulas/battery.ts";
import { cordVoltageDropV } from "../formulas/cable.ts";
import { vapourPressureBar } from "../formulas/lpg.ts";
import { cellTemperatureC, panelPowerW } from "../formulas/solar.ts";
import { applies, type StepView } from "./contract.ts";
import { inletPowerW } from "./hook-up/physics.ts";
import { capacityFactor, NOMINAL_V, peukertFactor } from "./leisure-battery/physics.ts";
import { readBattery, stateOfCharge } from "./leisure-battery/read-battery.ts";
import { drawOffKgH, FLOW_STOPS_C, wettedKg } from "./lpg/physics.ts";
import { type ParsedSpec, parseSpec, type SystemKind, systemModule } from "./registry.ts";
import { shareOfDay } from "./running.ts";
import { panelW } from "./solar/physics.ts";

const agm = (spec: Record<string, unknown> = {}) =>
  parseSpec("leisureBattery", { chemistry: "agm", ratedAh: 100, ...spec });
const gas = (fuel: string) =>
  parseSpec("lpg", {
    arrangement: "exchange",
    fuel,
    cylinders: 2,
    kgEach: 6,
    tareKgEach: 8,
    hoseDate: "2024-01-01",
  });

const readOf = (kind: "cassetteToilet", spec: ParsedSpec, pct: number) => {
  const { physics } = systemModule(kind);
  return applies(physics) ? (physics.read?.(spec, pct, "%", null) ?? null) : null;
};

describe("the physics of the systems agrees with the formula book", () => {
  it("empties a battery in the hours of the hour-rated Peukert form", () => {
    const factor = peukertFactor(agm({ peukert: 1.2 }), 10);
    expect(100 / (10 * factor)).toBeCloseTo(runTimeH(100, 20, 1.2, 10), 9);
  });

  it("credits no gain below the rated current", () => {
    expect(peukertFactor(agm(), 1)).toBe(1);
  });

  it("loses capacity in the cold by the printed table", () => {
    for (const celsius of [-20, -10, 0, 3, 5, 12, 20, 25, 30]) {
      expect(100 * (capacityFactor("agm", celsius) - 1)).toBeCloseTo(leadAcidCapacityChangePct(celsius), 9);
    }
  });

  it("reads the state of charge from the printed rest voltages", () => {
    for (const pct of [10, 35, 50, 90, 100])
      expect(stateOfCharge(restVoltageV(pct))).toBeCloseTo(pct / 100, 9);
  });

  it("yields the panel's power at its cell temperature", () => {
    const panel = parseSpec("solar", { peakW: 100, noctC: 45, perKelvin: -0.004, efficiency: 0.85 });
    const expected = panelPowerW(640, cellTemperatureC(640, 14, 45), 100, -0.004) * 0.85;
    expect(panelW(panel, 640, 14)).toBeCloseTo(expected, 9);
  });

  it("loses the cord's drop between post and inlet", () => {
    const inlet = parseSpec("hookUp", {});
    expect(inletPowerW(inlet, 10, false)).toBeCloseTo((230 - cordVoltageDropV(2.5, 25, 10)) * 10, 6);
    expect(inletPowerW(inlet, 32, false)).toBeLessThan(230 * 16);
    expect(inletPowerW(inlet, 10, true)).toBe(500);
  });

  it("stops the flow of butane near freezing and of propane far below any night here", () => {
    expect(vapourPressureBar("butane", FLOW_STOPS_C.butane)).toBeCloseTo(1.05, 6);
    expect(FLOW_STOPS_C.butane).toBeGreaterThan(-1);
    expect(FLOW_STOPS_C.propane).toBeLessThan(-40);
    expect(drawOffKgH(gas("butane"), 0, 1)).toBe(0);
  });

  it("draws off less gas from a colder and from an emptier cylinder", () => {
    const propane = gas("propane");
    expect(drawOffKgH(propane, -10, 1)).toBeLessThan(drawOffKgH(propane, 10, 1));
    expect(drawOffKgH(propane, 0, 0.3)).toBeLessThan(drawOffKgH(propane, 0, 1));
    // a 6 kg cylinder feeds a 4 kW heater at 0 °C
    expect(drawOffKgH(propane, 0, 1)).toBeGreaterThan(4 / 12.87);
  });

  it("draws from one cylinder after the other, and from a full one beside it only where it changes over by itself", () => {
    const two = (automaticChangeOver: boolean) => ({ ...gas("propane"), automaticChangeOver });
    const byHand = [12, 9, 6.3, 6, 3, 0.1].map((kg) => wettedKg(two(false), kg));
    for (const [k, kg] of [6, 3, 0.9, 6, 3, 0.9].entries()) expect(byHand[k]).toBeCloseTo(kg, 9);
    expect(wettedKg(two(true), 6.3)).toBeCloseTo(6.9, 9);
    // the last one has none beside it
    expect(wettedKg(two(true), 3)).toBeCloseTo(3, 9);
  });

  it("takes the panel's reading of a toilet with a spare for the cassette in use, whichever that is", () => {
    const toilet = (spareCassettes: number) => parseSpec("cassetteToilet", { litres: 18, spareCassettes });
    const read = (spares: number) => readOf("cassetteToilet", toilet(spares), 50);
    expect(read(0)!.level).toBeCloseTo(9, 9);
    // half of it, and none or one that is full beside it
    expect(read(1)!.level).toBeCloseTo(9 + 9, 9);
    expect(read(1)!.sd).toBeGreaterThan(9);
  });

  it("says nothing from the voltage of a lithium battery", () => {
    expect(
      readBattery(
        parseSpec("leisureBattery", { chemistry: "lfp", ratedAh: 100, usableShare: 0.9 }),
        13.2,
        "V",
        null,
      ),
    ).toBeNull();
  });

  it("takes 12.2 V at rest for half the rated charge, which is the cut-off of a battery used to one half", () => {
    expect(readBattery(agm(), 12.2, "V", null)!.level).toBeCloseTo(0, 6);
    expect(readBattery(agm(), 100, "%", null)!.level).toBeCloseTo(50 * NOMINAL_V, 6);
  });

  it("adds a day's habits up to the same whatever the step", () => {
    const windows = [
      { fromH: 7.1, toH: 9.3, share: 0.4 },
      { fromH: 18, toH: 21.55, share: 0.6 },
    ];
    for (const dtH of [0.125, 0.25, 1]) {
      let sum = 0;
      for (let h = 0; h < 24; h += dtH) sum += shareOfDay(windows, h + dtH / 2, dtH);
      expect(sum).toBeCloseTo(1, 9);
    }
  });
});

describe("one step of a system", () => {
  const context = { n: 1, dtH: 0.25, people: 2, setting: {}, vehicle: { floorAreaM2: 7 } };
  /** Its runnings, and the step as it sees it: nothing random, noon. */
  const start = (kind: SystemKind, spec: Record<string, unknown>, dtH = context.dtH) => {
    const { physics } = systemModule(kind);
    return applies(physics) ? physics.start!(parseSpec(kind, spec), { ...context, dtH }) : [];
  };
  const view = (more: Partial<StepView>): StepView =>
    ({
      n: 1,
      dtH: 0.25,
      clockH: 12,
      day: 0,
      driving: false,
      people: 2,
      postAmperes: 0,
      dayNormal: () => new Float64Array(1),
      tripNormal: () => new Float64Array(1),
      ...more,
    }) as StepView;
  const of = (value: number) => new Float64Array(1).fill(value);

  it("runs the heater's fan as long for each Wh of heat whatever the step, also where it gets less than it asks for", () => {
    const fanPerWh = (dtH: number, reachPerH: number) => {
      const [heater] = start("heating", { source: "gas" }, dtH);
      const fill = (value: number) => (_set: Float64Array, out: Float64Array) => out.fill(value);
      // 600 W hold it, and it is so many Wh short of its target
      const cold = view({ dtH, heatToHold: fill(600 * dtH), heatToReach: fill(600 * dtH + reachPerH) });
      heater!.prepare(cold, heater!.demand);
      const [burner] = heater!.modes.filter(({ id }) => id === "lpg");
      return burner!.needs[1]![0]! / burner!.gives[0]![0]!;
    };
    for (const missing of [0, 50, 300, 1500]) {
      expect(fanPerWh(0.125, missing)).toBeCloseTo(fanPerWh(0.25, missing), 12);
    }
    expect(fanPerWh(0.25, 300)).toBeLessThan(fanPerWh(0.25, 0));
  });

  it("yields the sun by the warmth of the air around the panel", () => {
    const spec = { peakW: 100 };
    const [sun] = start("solar", spec);
    for (const airC of [-5, 35]) {
      sun!.prepare(view({ irradianceWm2: of(700), outsideC: of(airC) }), sun!.demand);
      expect(sun!.modes[0]!.gives[0]![0]).toBeCloseTo(panelW(parseSpec("solar", spec), 700, airC) / 4, 9);
    }
  });

  it("runs the fridge in proportion to what the cabin is warmer than its inside", () => {
    for (const [type, at25] of [
      ["absorption", 0.65],
      ["compressor", 0.35],
    ] as const) {
      const [fridge] = start("fridge", { type });
      const duty = (cabinC: number) => {
        fridge!.prepare(view({ cabinC: of(cabinC) }), fridge!.demand);
        return fridge!.demand[0]!;
      };
      expect(duty(25)).toBeCloseTo(at25, 9);
      expect(duty(15)).toBeCloseTo(at25 / 2, 9);
      expect(duty(45)).toBeCloseTo(Math.min(1, 2 * at25), 9);
      expect(duty(-5)).toBeCloseTo(0.08, 9);
    }
  });

  it("takes from the running engine what it gives to the battery, and what a converter loses of it", () => {
    for (const [drivingCharge, efficiency] of [
      ["relay", 1],
      ["dcdc", 0.9],
    ] as const) {
      const [, engine] = start("charging", { drivingCharge, drivingChargeA: 40 });
      const { needs, gives } = engine!.modes[0]!;
      expect(gives[0]![0]).toBeCloseTo((40 * 14) / 4, 9);
      expect(needs[0]![0]).toBeCloseTo((40 * 14) / 4 / efficiency, 9);
      expect(engine!.prepare(view({ driving: true }), engine!.demand)).toBe(true);
      expect(engine!.prepare(view({ driving: false }), engine!.demand)).toBe(false);
    }
  });
});
