/** Photovoltaic panels. */
import { between } from "./args.ts";
import { entry } from "./entry.ts";

/** Cell temperature, °C, from irradiance, air temperature and the nominal operating cell temperature (Ross). */
export function cellTemperatureC(irradianceWm2: number, airC: number, noctC: number): number {
  return airC + ((noctC - 20) * irradianceWm2) / 800;
}

/** Power of a panel, W, from its rating at 1000 W/m² and 25 °C and its coefficient per kelvin (negative). */
export function panelPowerW(irradianceWm2: number, cellC: number, ratedW: number, perKelvin: number): number {
  return Math.max(0, (irradianceWm2 / 1000) * ratedW * (1 + perKelvin * (cellC - 25)));
}

export const SOLAR_FORMULAS = [
  entry(
    "solar.cellTemperature",
    "°C",
    "ross-1976",
    "Ta + (NOCT − 20) G/800",
    { irradianceWm2: between(0, 2000), airC: between(-60, 80), noctC: between(20, 150) },
    (a) => cellTemperatureC(a.irradianceWm2, a.airC, a.noctC),
  ),
  entry(
    "solar.power",
    "W",
    "pvwatts-5",
    "module model",
    {
      irradianceWm2: between(0, 2000),
      cellC: between(-60, 150),
      ratedW: between(0, 1_000_000),
      perKelvin: between(-0.02, 0.02),
    },
    (a) => panelPowerW(a.irradianceWm2, a.cellC, a.ratedW, a.perKelvin),
  ),
];
