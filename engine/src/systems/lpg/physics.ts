import { boilingPointC, latentHeatKJkg } from "../../formulas/lpg.ts";
import type { Keeping, PhysicsContext, SystemPhysics } from "../contract.ts";
import { readTank } from "../read-level.ts";
import type { LpgSpec } from "./spec.ts";

/** pressure in the cylinder that still feeds the regulator, bar absolute: 30 mbar appliances plus losses, from memory */
const LEAST_BAR = 1.05;
/** Temperature at which the vapour no longer pushes through the regulator, °C. */
export const FLOW_STOPS_C = {
  propane: boilingPointC("propane", LEAST_BAR),
  butane: boilingPointC("butane", LEAST_BAR),
} as const;
/**
 * Heat that reaches the liquid through the wetted wall, W/K, for a full cylinder of 6 kg; grows with the wall
 * (mass^⅔). Fitted to a printed draw-off chart of a 45 kg cylinder (flameengineering.com), optimistic for a
 * small one: the shape (falls with level and cold) is meant, not the size.
 */
const WALL_W_K_6KG = 4.5;
/** the last liquid wets the floor of the cylinder */
const LEAST_WETTED = 0.15;

export function contentKg(spec: LpgSpec): number {
  return spec.cylinders * spec.kgEach;
}

/** Most gas that a cylinder can give off, kg/h, at a locker temperature and a share of its filling. */
export function drawOffKgH(spec: LpgSpec, lockerC: number, filledShare: number): number {
  const driving = lockerC - FLOW_STOPS_C[spec.fuel];
  if (driving <= 0) return 0;
  const wetted = Math.max(filledShare, LEAST_WETTED);
  const heatW = WALL_W_K_6KG * (spec.kgEach / 6) ** (2 / 3) * wetted * driving;
  return (heatW * 3.6) / latentHeatKJkg(spec.fuel, FLOW_STOPS_C[spec.fuel]);
}

/**
 * Gas that wets the wall, kg of a cylinder, of those fitted: one is used after the other. By hand only the one in use
 * gives gas until it is empty and somebody changes it; where it changes over by itself a full one beside it helps out.
 */
export function wettedKg({ kgEach, automaticChangeOver }: LpgSpec, levelKg: number): number {
  const full = Math.ceil(levelKg / kgEach - 1e-9) - 1;
  const inUse = Math.max(levelKg - full * kgEach, LEAST_WETTED * kgEach);
  return automaticChangeOver && full > 0 ? inUse + kgEach : inUse;
}

function keepGas(spec: LpgSpec, { n, dtH }: PhysicsContext): Keeping {
  const stops = FLOW_STOPS_C[spec.fuel];
  const perKelvin = (drawOffKgH(spec, stops + 1, 1) * dtH) / spec.kgEach;
  return {
    store: "lpg",
    limitOut: (view, mostOut) => {
      const level = view.level("lpg");
      const { outsideC } = view;
      for (let i = 0; i < n; i++) {
        const driving = outsideC[i]! - stops;
        mostOut[i] = driving > 0 ? perKelvin * wettedKg(spec, level[i]!) * driving : 0;
      }
      return true;
    },
  };
}

/** Bottled gas. The store is what all fitted cylinders hold, the spare too; a refillable one holds its 80 % fill. The locker is as cold as outside. */
export const physics: SystemPhysics<LpgSpec> = {
  stores: (spec) => [{ store: "lpg", capacity: contentKg(spec), initial: 1 }],
  keep: keepGas,
  read: (spec, value, unit, sd) => readTank(contentKg(spec), "kg", value, unit, sd),
};
