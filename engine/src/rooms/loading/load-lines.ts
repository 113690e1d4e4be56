import type { Basis } from "../../base/figure.ts";
import { toleranceSdKg } from "../../formulas/loading.ts";
import { axleLoads } from "../../formulas/mass.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { parseSpec, systemModule } from "../../systems/registry.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { Traveller } from "../situation.ts";
import { LOAD_DEFAULTS as D } from "./defaults.ts";
import type { LoadInput, LoadLineKind } from "./types.ts";

/** One mass with its place, in bare numbers, kg and m; what the sums and the search run on. */
export interface MassLine {
  readonly id: string;
  readonly kind: LoadLineKind;
  readonly name: string;
  readonly massKg: number;
  readonly atM: number | null;
  readonly frontKg: number;
  readonly rearKg: number;
  readonly sdKg: number;
  readonly removable: boolean;
  readonly basis: Basis;
}

/** kinds whose mass the load plan gives (litres, cylinders, share of fuel) instead of the full store */
const BY_PLAN = ["freshWater", "lpg", "fuel"];

/** Every mass of the loaded vehicle: mass in running order first, then all that differs from its basis. */
export function loadLines(input: LoadInput): readonly MassLine[] {
  return [
    runningOrder(input.vehicle),
    ...options(input.vehicle),
    ...people(input),
    ...dogs(input),
    ...fuel(input),
    ...water(input),
    ...cylinders(input),
    ...fitted(input.vehicle),
    ...items(input),
  ];
}

type Placed = Omit<MassLine, "frontKg" | "rearKg" | "atM"> & { readonly atM: number };

function placed(vehicle: VehicleDescription, line: Placed): MassLine {
  const loads = axleLoads(vehicle.dimensions.wheelbaseM, [
    { massKg: line.massKg, behindFrontAxleM: line.atM },
  ]);
  return { ...line, ...loads };
}

function runningOrder({ masses, firstRegistered, validFrom }: VehicleDescription): MassLine {
  const { miroKg, miroFrontKg, miroBasis } = masses;
  const tolerance = ruleFigure(
    "mass.runningOrder.toleranceShare",
    validFrom > firstRegistered ? validFrom : firstRegistered,
  );
  const sdKg = miroBasis.weighed ? (miroBasis.sdKg ?? D.weighedSdKg) : toleranceSdKg(miroKg, tolerance.value);
  const basis: Basis = miroBasis.weighed ? "measured" : "declared";
  return {
    id: "runningOrder",
    kind: "runningOrder",
    name: "load.runningOrder",
    massKg: miroKg,
    atM: null,
    frontKg: miroFrontKg,
    rearKg: miroKg - miroFrontKg,
    sdKg,
    removable: false,
    basis,
  };
}

function options(vehicle: VehicleDescription): MassLine[] {
  return vehicle.masses.options.map((option, index) =>
    placed(vehicle, {
      id: `option.${index}`,
      kind: "option",
      name: option.name,
      massKg: option.massKg,
      atM: option.behindFrontAxleM,
      sdKg: 0,
      removable: false,
      basis: "declared",
    }),
  );
}

function fitted(vehicle: VehicleDescription): MassLine[] {
  return vehicle.systems.flatMap(({ id, kind, spec }, index) => {
    if (BY_PLAN.includes(kind)) return [];
    const parts = systemModule(kind).spec.masses(parseSpec(kind, spec, `systems.${index}`));
    return parts
      .filter(({ inMiro }) => !inMiro)
      .map((part, k) =>
        placed(vehicle, {
          id: `${id}.${k}`,
          kind: "fitted",
          name: part.name,
          massKg: part.massKg,
          atM: part.behindFrontAxleM,
          sdKg: 0,
          removable: part.removable,
          basis: "declared",
        }),
      );
  });
}

const isAdult = ({ kind }: Traveller) => kind === "adult";

/** Where each traveller sits, m; the described rows in turn where the plan does not say. */
function seatOf(input: LoadInput, traveller: Traveller, index: number): number {
  const seat = input.load.seats.find(({ travellerId }) => travellerId === traveller.id);
  if (seat !== undefined) return seat.behindFrontAxleM;
  const rows = specsOf(input.vehicle, "seatsBelts")[0];
  return index < 2 ? (rows?.frontRowM ?? 0.5) : (rows?.rearRowM ?? 2);
}

/** The traveller at the wheel: the one named, else the foremost adult, the first of equals. */
export function driverOf(input: LoadInput): Traveller | undefined {
  const { travellers } = input.party;
  const named = travellers.find(({ id }) => id === input.driverId);
  const foremost = travellers
    .map((traveller, index) => ({ traveller, atM: seatOf(input, traveller, index) }))
    .filter(({ traveller }) => isAdult(traveller))
    .sort((a, b) => a.atM - b.atM)[0];
  return named ?? foremost?.traveller;
}

/** Mass of a traveller, kg: declared, else the usual one for the age. */
export function massOf({ massKg, kind, ageYears }: Traveller): {
  readonly kg: number;
  readonly isDeclared: boolean;
} {
  if (massKg !== undefined) return { kg: massKg, isDeclared: true };
  if (kind === "adult") return { kg: D.adultKg, isDeclared: false };
  const byAge = ageYears === undefined ? undefined : D.childKg.find(({ upToYears }) => ageYears <= upToYears);
  return { kg: byAge?.kg ?? D.childOfUnknownAgeKg, isDeclared: false };
}

function people(input: LoadInput): MassLine[] {
  const driver = driverOf(input);
  return input.party.travellers.map((traveller, index) => {
    const isDriver = traveller === driver;
    const { kg, isDeclared } = massOf(traveller);
    const massKg = isDriver ? kg - input.vehicle.masses.miroBasis.driverKg : kg;
    const sdKg = isDeclared ? D.declaredPersonSdKg : D.defaultPersonSdKg;
    const id = `traveller.${traveller.id}`;
    const name = traveller.name ?? traveller.id;
    return placed(input.vehicle, {
      id,
      kind: isDriver ? "driver" : "traveller",
      name,
      massKg,
      atM: seatOf(input, traveller, index),
      sdKg,
      removable: false,
      basis: isDeclared ? "declared" : "default",
    });
  });
}

function dogs({ vehicle, party }: LoadInput): MassLine[] {
  const atM = specsOf(vehicle, "seatsBelts")[0]?.rearRowM ?? vehicle.dimensions.wheelbaseM / 2;
  return Array.from({ length: party.dogs }, (_, k) =>
    placed(vehicle, {
      id: `dog.${k}`,
      kind: "dog",
      name: "load.dog",
      massKg: D.dogKg,
      atM,
      sdKg: D.dogSdKg,
      removable: false,
      basis: "default",
    }),
  );
}

function fuel({ vehicle, load }: LoadInput): MassLine[] {
  const tank = specsOf(vehicle, "fuel")[0];
  const perLitre = D.fuelKgPerLitre[vehicle.fuel];
  if (tank === undefined || perLitre === 0) return [];
  const massKg = (load.fuelShare - vehicle.masses.miroBasis.fuelShare) * tank.tankLitres * perLitre;
  const sdKg = D.fuelSdShare * tank.tankLitres * perLitre;
  return [
    placed(vehicle, {
      id: "fuel",
      kind: "fuel",
      name: "load.fuel",
      massKg,
      atM: tank.behindFrontAxleM,
      sdKg,
      removable: false,
      basis: "from memory",
    }),
  ];
}

function water({ vehicle, load }: LoadInput): MassLine[] {
  const tanks = specsOf(vehicle, "freshWater");
  const litres = tanks.reduce((sum, tank) => sum + tank.litres, 0);
  if (litres === 0) return [];
  const atM = tanks.reduce((sum, tank) => sum + tank.litres * tank.behindFrontAxleM, 0) / litres;
  const massKg = (load.waterLitres - vehicle.masses.miroBasis.waterShare * litres) * D.waterKgPerLitre;
  return [
    placed(vehicle, {
      id: "water",
      kind: "water",
      name: "load.water",
      massKg,
      atM,
      sdKg: D.waterSdLitres,
      removable: false,
      basis: "declared",
    }),
  ];
}

function cylinders({ vehicle, load }: LoadInput): MassLine[] {
  const lpg = specsOf(vehicle, "lpg")[0];
  if (lpg === undefined) return [];
  const massKg = (load.lpgCylinders - vehicle.masses.miroBasis.lpgCylinders) * (lpg.kgEach + lpg.tareKgEach);
  return [
    placed(vehicle, {
      id: "cylinders",
      kind: "cylinder",
      name: "load.cylinders",
      massKg,
      atM: lpg.behindFrontAxleM,
      sdKg: 0,
      removable: false,
      basis: "declared",
    }),
  ];
}

function items({ vehicle, load }: LoadInput): MassLine[] {
  return load.items.map((item) =>
    placed(vehicle, {
      id: `item.${item.id}`,
      kind: "item",
      name: item.name,
      massKg: item.massKg,
      atM: item.behindFrontAxleM,
      sdKg: item.sdKg ?? D.itemSdShare * item.massKg,
      removable: item.removable,
      basis: "declared",
    }),
  );
}
