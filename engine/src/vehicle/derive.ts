import { type Figure, figure } from "../base/figure.ts";
import { axleLoads, minimumPayloadKg } from "../formulas/mass.ts";
import { loadIndexKg } from "../formulas/tyre.ts";
import type { VehicleDescription } from "./description.ts";
import { specsOf } from "./specs-of.ts";

/** What follows from the description alone. Each axle's tyre load is two tyres of its load index; null without tyres described. */
export interface VehicleFigures {
  /** MAM less the mass in running order and the options fitted since */
  readonly payload: Figure;
  /** least payload of Regulation (EU) No 1230/2012 for these seats and this length */
  readonly minimumPayload: Figure;
  /** what each axle may still take above the mass in running order and the options fitted since */
  readonly axleReserve: { readonly front: Figure; readonly rear: Figure };
  readonly belts: Figure;
  readonly berths: Figure;
  readonly usableAh: Figure;
  readonly lpgKg: Figure;
  readonly waterLitres: Figure;
  readonly wasteLitres: Figure;
  readonly tyreLoad: { readonly front: Figure; readonly rear: Figure } | null;
  readonly heightM: Figure;
  /** rounded up to the next inch: the sign by the road is taken as it reads */
  readonly heightFeetInches: { readonly feet: number; readonly inches: number };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Derives the figures of a vehicle; every one carries its formula, inputs and basis. */
export function deriveVehicle(vehicle: VehicleDescription): VehicleFigures {
  const { masses, dimensions } = vehicle;
  const of = { vehicle: vehicle.id };
  const seats = specsOf(vehicle, "seatsBelts");
  const beltCount = sum(seats.map((each) => each.beltedSeats));
  const declared = (value: number, unit: string) => figure(value, unit, "-", of, "declared");
  const optionsKg = sum(masses.options.map((each) => each.massKg));
  const inches = Math.ceil(dimensions.heightM / 0.0254 - 1e-9);
  return {
    payload: figure(
      masses.mamKg - masses.miroKg - optionsKg,
      "kg",
      "mass.payload",
      { mamKg: masses.mamKg, miroKg: masses.miroKg, optionsKg },
      "computed",
    ),
    minimumPayload: figure(
      minimumPayloadKg(beltCount, dimensions.lengthM),
      "kg",
      "mass.minimumPayload",
      { people: beltCount, lengthM: dimensions.lengthM },
      "computed",
      "eu-1230-2012",
    ),
    axleReserve: axleReserves(vehicle),
    belts: declared(beltCount, "count"),
    berths: declared(sum(seats.map((each) => each.berths)), "count"),
    usableAh: declared(
      sum(specsOf(vehicle, "leisureBattery").map((each) => each.ratedAh * each.usableShare)),
      "Ah",
    ),
    lpgKg: declared(sum(specsOf(vehicle, "lpg").map((each) => each.cylinders * each.kgEach)), "kg"),
    waterLitres: declared(sum(specsOf(vehicle, "freshWater").map((each) => each.litres)), "L"),
    wasteLitres: declared(sum(specsOf(vehicle, "wasteWater").map((each) => each.litres)), "L"),
    tyreLoad: tyreLoads(vehicle),
    heightM: declared(dimensions.heightM, "m"),
    heightFeetInches: { feet: Math.floor(inches / 12), inches: inches % 12 },
  };
}

function axleReserves({ masses, dimensions }: VehicleDescription): VehicleFigures["axleReserve"] {
  const options = axleLoads(dimensions.wheelbaseM, masses.options);
  const running = { front: masses.miroFrontKg, rear: masses.miroKg - masses.miroFrontKg };
  const reserve = (axle: "front" | "rear", optionsKg: number) => {
    const inputs = { limitKg: masses.axleMaxKg[axle], loadKg: running[axle] + optionsKg };
    return figure(inputs.limitKg - inputs.loadKg, "kg", "mass.margin", inputs, "computed");
  };
  return { front: reserve("front", options.frontKg), rear: reserve("rear", options.rearKg) };
}

function tyreLoads(vehicle: VehicleDescription): VehicleFigures["tyreLoad"] {
  const tyres = specsOf(vehicle, "tyres")[0];
  return tyres === undefined
    ? null
    : { front: axleOf(tyres.loadIndexFront), rear: axleOf(tyres.loadIndexRear) };
}

const axleOf = (index: number) =>
  figure(2 * loadIndexKg(index), "kg", "tyre.axleCapacity", { index, tyres: 2 }, "computed", "iso-4000-1");
