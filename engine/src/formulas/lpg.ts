/**
 * Propane and n-butane. Saturation was computed from the reference equations of state (Lemmon, McLinden and
 * Wagner 2009; Bücker and Wagner 2006) from −50 to 65 °C and fitted here: pressure within 0.005 %, liquid
 * density within 0.04 kg/m³, latent heat within 0.02 kJ/kg of them.
 */
export type LpgFuel = "propane" | "butane";

interface Saturation {
  readonly criticalK: number;
  readonly criticalBar: number;
  readonly criticalKgM3: number;
  /** exponents 1, 1.5, 2.5, 5 of θ = 1 − T/Tc */
  readonly pressure: readonly [number, number, number, number];
  /** exponents 0.35, 1, 2, 4 */
  readonly density: readonly [number, number, number, number];
  /** exponents 0.38, 1, 2, 3; kJ/kg */
  readonly latent: readonly [number, number, number, number];
  /** gas at 15 °C and 1 atm, from the same equations */
  readonly gasKgM3: number;
  /** kJ/kg at 25 °C, gas */
  readonly grossKJkg: number;
  readonly netKJkg: number;
  /** practical flammable limits in air, % by volume */
  readonly flammablePct: readonly [number, number];
}

export const LPG: Readonly<Record<LpgFuel, Saturation>> = {
  propane: {
    criticalK: 369.89,
    criticalBar: 42.512,
    criticalKgM3: 220.4781,
    pressure: [-6.74669, 1.49105, -1.46705, -2.35412],
    density: [1.95776, 0.714829, -0.235915, 0.510924],
    latent: [595.208, 159.223, -449.555, 359.057],
    gasKgM3: 1.8992,
    grossKJkg: 50350,
    netKJkg: 46360,
    flammablePct: [2.1, 9.5],
  },
  butane: {
    criticalK: 425.125,
    criticalBar: 37.96,
    criticalKgM3: 228,
    pressure: [-7.05163, 1.68724, -1.84802, -2.52226],
    density: [2.03312, 0.618324, -0.070962, 0.269925],
    latent: [542.376, 164.099, -457.248, 397.197],
    gasKgM3: 2.5442,
    grossKJkg: 49500,
    netKJkg: 45720,
    flammablePct: [1.8, 8.5],
  },
};

function polynomial(
  c: readonly [number, number, number, number],
  e: readonly [number, number, number, number],
  theta: number,
): number {
  return c[0] * theta ** e[0] + c[1] * theta ** e[1] + c[2] * theta ** e[2] + c[3] * theta ** e[3];
}

/** Vapour pressure, bar absolute, from −50 to 65 °C. */
export function vapourPressureBar(fuel: LpgFuel, temperatureC: number): number {
  const { criticalK, criticalBar, pressure } = LPG[fuel];
  const kelvin = temperatureC + 273.15;
  return (
    criticalBar *
    Math.exp((criticalK / kelvin) * polynomial(pressure, [1, 1.5, 2.5, 5], 1 - kelvin / criticalK))
  );
}

/** Density of the boiling liquid, kg/m³, from −50 to 65 °C. */
export function liquidDensityKgM3(fuel: LpgFuel, temperatureC: number): number {
  const { criticalK, criticalKgM3, density } = LPG[fuel];
  return criticalKgM3 * (1 + polynomial(density, [0.35, 1, 2, 4], 1 - (temperatureC + 273.15) / criticalK));
}

/** Latent heat of vaporisation, kJ/kg, from −50 to 65 °C. */
export function latentHeatKJkg(fuel: LpgFuel, temperatureC: number): number {
  const { criticalK, latent } = LPG[fuel];
  return polynomial(latent, [0.38, 1, 2, 3], 1 - (temperatureC + 273.15) / criticalK);
}

/** Boiling point at a pressure, °C, within −50 to 65 °C; halving the interval, to 1e-9 K. */
export function boilingPointC(fuel: LpgFuel, pressureBar: number): number {
  let [low, high] = [-50, 65];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (vapourPressureBar(fuel, middle) < pressureBar) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Energy of a mass of fuel, kWh: gross (water condensed) or net. */
export function lpgEnergyKwh(fuel: LpgFuel, massKg: number, basis: "gross" | "net"): number {
  return (massKg * (basis === "gross" ? LPG[fuel].grossKJkg : LPG[fuel].netKJkg)) / 3600;
}

/**
 * Steady draw-off of vapour, kg/h, that the heat through the wetted wall can boil off while the pressure stays at
 * or above `minimumBar` (absolute): U A (outside − boiling point) / latent heat; 0 where it is too cold.
 */
export function drawOffKgH(
  fuel: LpgFuel,
  outsideC: number,
  wettedAreaM2: number,
  transferWm2K: number,
  minimumBar: number,
): number {
  const boilC = boilingPointC(fuel, minimumBar);
  const warmW = transferWm2K * wettedAreaM2 * Math.max(0, outsideC - boilC);
  return (warmW * 3.6) / latentHeatKJkg(fuel, boilC);
}
