import type { VehicleDescription } from "./description.ts";

/** Invented vehicles for the tests beside the rooms; nobody's real vehicle. */
type Systems = VehicleDescription["systems"];

const tyres = (index: number, rearBehindFrontAxleM: number) => ({
  id: "tyres",
  kind: "tyres",
  spec: {
    loadIndexFront: index,
    loadIndexRear: index,
    pressureFrontBar: 4.5,
    pressureRearBar: 5.0,
    dotWeek: "2024-03-04",
    rearBehindFrontAxleM,
  },
});
const seats = (beltedSeats: number, berths: number, petsAllowed = false) => ({
  id: "seats",
  kind: "seatsBelts",
  spec: { beltedSeats, berths, petsAllowed },
});
const lpg = (kgEach: number, tareKgEach: number, behindFrontAxleM: number) => ({
  id: "lpg",
  kind: "lpg",
  spec: {
    arrangement: "exchange",
    cylinders: 2,
    kgEach,
    tareKgEach,
    hoseDate: "2024-02-01",
    behindFrontAxleM,
  },
});
const water = (litres: number, behindFrontAxleM: number) => ({
  id: "water",
  kind: "freshWater",
  spec: { litres, behindFrontAxleM },
});

const body = { floorAreaM2: 8, volumeM3: 14, lossWK: 60, capacityWhK: 250, airChangesPerHour: 0.6 };

/** Panel van conversion of 3,500 kg with two seats and two cylinders of 6 kg. */
export function panelVan(change: Partial<VehicleDescription> = {}): VehicleDescription {
  const systems: Systems = [
    seats(2, 2),
    lpg(6, 8, 3.4),
    water(95, 2.6),
    { id: "battery", kind: "leisureBattery", spec: { chemistry: "agm", ratedAh: 95 } },
    { id: "fuel", kind: "fuel", spec: { tankLitres: 90 } },
    tyres(112, 3.8),
  ];
  return {
    id: "panelVan",
    name: "Test panel van",
    registration: "TE57 VAN",
    bodyStyle: "panelVanConversion",
    validFrom: "2025-01-01",
    firstRegistered: "2023-04-01",
    fuel: "diesel",
    category: "M1",
    emissionClass: "Euro 6",
    dimensions: { lengthM: 5.99, widthM: 2.05, heightM: 2.65, wheelbaseM: 3.8, rearOverhangM: 1.2 },
    masses: {
      mamKg: 3500,
      technicalMaxKg: 3500,
      miroKg: 2930,
      miroBasis: { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false },
      miroFrontKg: 1500,
      axleMaxKg: { front: 1850, rear: 2000 },
      options: [{ name: "awning", massKg: 45, behindFrontAxleM: 2.6 }],
    },
    body,
    consumption: { litresPer100Km: 9.5 },
    systems,
    ...change,
  };
}

/** Overcab of 3,500 kg for six, 4.0 m wheelbase: the vehicle of the overload scenario. */
export function overcab(change: Partial<VehicleDescription> = {}): VehicleDescription {
  return panelVan({
    id: "overcab",
    name: "Test overcab",
    registration: "TE57 OVR",
    bodyStyle: "overcab",
    dimensions: { lengthM: 7.0, widthM: 2.3, heightM: 3.1, wheelbaseM: 4.0, rearOverhangM: 2.1 },
    masses: {
      mamKg: 3500,
      technicalMaxKg: 3650,
      miroKg: 3060,
      miroBasis: { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false },
      miroFrontKg: 1420,
      axleMaxKg: { front: 1850, rear: 2120 },
      options: [],
    },
    systems: [
      seats(6, 6),
      lpg(11, 11, 3.2),
      water(120, 2.5),
      { id: "fuel", kind: "fuel", spec: { tankLitres: 90 } },
      tyres(112, 4.0),
    ],
    ...change,
  });
}
