import type { Keeping, Running, StepView } from "../systems/contract.ts";
import { fillAll } from "./fill-all.ts";

/** cabin heat is counted above this temperature, °C */
export const CABIN_ZERO_C = -40;
/** the store ends at this temperature, °C; no cabin gets there */
export const CABIN_TOP_C = 80;
/** sensible heat of one person at rest, W (ISO 7730, seated at rest about 1 met less the latent part; from memory) */
const PERSON_W = 75;
/** part of the floor area that acts as glass facing the sun: common practice, no source */
const SUN_APERTURE_PER_FLOOR = 0.05;
/** heat capacity of air, Wh/m³K (MacKay, Sustainable Energy, table E: 1.2 kJ/m³K) */
const AIR_WH_M3K = 0.333;

export interface Body {
  readonly floorAreaM2: number;
  readonly volumeM3: number;
  readonly lossWK: number;
  readonly capacityWhK: number;
  readonly airChangesPerHour: number;
}

export interface Cabin {
  readonly running: Running;
  readonly keeping: Keeping;
  /** fills the temperature of every life from its heat, °C */
  temperature(heat: Float64Array, out: Float64Array): void;
  /** fills the temperature in the middle of the step where nothing is heated, °C */
  middle(outsideC: Float64Array, cabinC: Float64Array, out: Float64Array): void;
  heatToReach(setC: Float64Array, outsideC: Float64Array, cabinC: Float64Array, out: Float64Array): void;
  heatToHold(setC: Float64Array, outsideC: Float64Array, out: Float64Array): void;
}

/**
 * The living part as one thermal node: C dT/dt = −H (T − T_outside) + gains, solved exactly over a step in
 * which gains and outside air stand still: T' = T∞ + (T − T∞) e^(−H dt / C), T∞ = T_outside + gains / H.
 * All gains of the step enter the store; the loss booked at its end is what makes the exact T' come out, so
 * that the store balances. H differs between lives by `lossFactor` (air changes, wind, open doors).
 */
export function startCabin(body: Body, n: number, dtH: number, lossFactor: Float64Array): Cabin {
  const conductance = lossFactor.map(
    (factor) => (body.lossWK + AIR_WH_M3K * body.airChangesPerHour * body.volumeM3) * factor,
  );
  const decay = conductance.map((h) => Math.exp((-h * dtH) / body.capacityWhK));
  const whPerRest = conductance.map((h, i) => (h * dtH) / (1 - decay[i]!));
  const kelvinPerWh = conductance.map((h) => 1 / (h * dtH));
  const halfDecay = decay.map(Math.sqrt);
  const holdWhPerK = conductance.map((h) => h * dtH);
  const free = new Float64Array(n);
  const always = new Float64Array(n).fill(1);
  const c = body.capacityWhK;
  const aperture = SUN_APERTURE_PER_FLOOR * body.floorAreaM2;
  return {
    running: {
      demand: new Float64Array(n),
      modes: [
        { id: "gains", needStores: [], needs: [], giveStores: ["cabinHeat"], gives: [free], limit: always },
      ],
      prepare: (view, demand) => {
        fillAll(demand, 1);
        const people = view.people * PERSON_W;
        const { irradianceWm2 } = view;
        for (let i = 0; i < n; i++) free[i] = (people + irradianceWm2[i]! * aperture) * dtH;
        return true;
      },
    },
    keeping: {
      store: "cabinHeat",
      lose: (view, netIn, loss) => loseHeat(view, netIn, loss, kelvinPerWh, decay, c),
    },
    temperature: (heat, out) => {
      for (let i = 0; i < n; i++) out[i] = heat[i]! / c + CABIN_ZERO_C;
    },
    middle: (outsideC, cabinC, out) => {
      for (let i = 0; i < n; i++) {
        const settled = outsideC[i]! + free[i]! * kelvinPerWh[i]!;
        out[i] = settled + (cabinC[i]! - settled) * halfDecay[i]!;
      }
    },
    heatToReach: (setC, outsideC, cabinC, out) => {
      for (let i = 0; i < n; i++) {
        const a = decay[i]!;
        const rest = setC[i]! - outsideC[i]! - (cabinC[i]! - outsideC[i]!) * a;
        const heat = rest * whPerRest[i]! - free[i]!;
        out[i] = Math.max(heat, 0);
      }
    },
    heatToHold: (setC, outsideC, out) => {
      for (let i = 0; i < n; i++) {
        const heat = (setC[i]! - outsideC[i]!) * holdWhPerK[i]! - free[i]!;
        out[i] = Math.max(heat, 0);
      }
    },
  };
}

function loseHeat(
  view: StepView,
  netIn: Float64Array,
  loss: Float64Array,
  kelvinPerWh: Float64Array,
  decay: Float64Array,
  capacity: number,
): void {
  const { cabinC, outsideC } = view;
  for (let i = 0; i < netIn.length; i++) {
    const inside = cabinC[i]!;
    const gained = netIn[i]!;
    const settled = outsideC[i]! + gained * kelvinPerWh[i]!;
    // after − inside = (settled − inside) (1 − decay)
    loss[i] = gained - capacity * (settled - inside) * (1 - decay[i]!);
  }
}

/** Capacity of the cabin's heat store, Wh. */
export function cabinCapacityWh(body: Body): number {
  return body.capacityWhK * (CABIN_TOP_C - CABIN_ZERO_C);
}

/** Heat of the cabin at a temperature, Wh. */
export function cabinHeatWh(body: Body, temperatureC: number): number {
  return body.capacityWhK * (temperatureC - CABIN_ZERO_C);
}
