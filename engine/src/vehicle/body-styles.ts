import type { BODY_STYLES, VehicleDescription } from "./description.ts";

export type BodyStyle = (typeof BODY_STYLES)[number];

/**
 * Where the description of a new vehicle starts: what is usual for a body style. All of it is common
 * practice without a source, there to be replaced; masses are left to the plate.
 */
export interface StartingPoint {
  readonly dimensions: VehicleDescription["dimensions"];
  readonly body: VehicleDescription["body"];
  readonly fuel: VehicleDescription["fuel"];
  readonly category: VehicleDescription["category"];
  readonly litresPer100Km: number;
  /** kinds of systems that are usually fitted; one that is not registered is passed over */
  readonly kinds: readonly string[];
}

/** In everything that is hired to live in. */
const ALWAYS = [
  "keys",
  "cab",
  "seatsBelts",
  "beds",
  "controlPanel",
  "leisureBattery",
  "charging",
  "hookUp",
  "lights",
  "cooking",
  "fridge",
  "freshWater",
  "wasteWater",
  "windows",
  "door",
  "alarms",
  "fuel",
  "def",
  "tyres",
];
const COACHBUILT = [
  ...ALWAYS,
  "solar",
  "lpg",
  "heating",
  "hotWater",
  "cassetteToilet",
  "step",
  "awning",
  "television",
];

const size = (
  lengthM: number,
  widthM: number,
  heightM: number,
  wheelbaseM: number,
  rearOverhangM: number,
) => ({ lengthM, widthM, heightM, wheelbaseM, rearOverhangM });
const shell = (floorAreaM2: number, volumeM3: number, lossWK: number, capacityWhK: number) => ({
  floorAreaM2,
  volumeM3,
  lossWK,
  capacityWhK,
  airChangesPerHour: 1,
});
const usual = { fuel: "diesel", category: "M1" } as const;

/** Usual starting points, practice. Lengths in m, loss in W/K, capacity in Wh/K. */
export const STARTING_POINTS: Readonly<Record<BodyStyle, StartingPoint>> = {
  campervan: {
    ...usual,
    dimensions: size(5.3, 1.95, 2, 3.4, 1),
    body: shell(5, 8, 55, 170),
    litresPer100Km: 8.5,
    kinds: [...ALWAYS, "awning"],
  },
  elevatingRoofCampervan: {
    ...usual,
    dimensions: size(4.9, 1.95, 2, 3, 0.9),
    body: shell(5, 8, 60, 170),
    litresPer100Km: 8,
    kinds: [...ALWAYS, "elevatingRoof", "heating", "awning"],
  },
  panelVanConversion: {
    ...usual,
    dimensions: size(5.99, 2.05, 2.65, 3.8, 1.2),
    body: shell(8.2, 13.5, 62, 260),
    litresPer100Km: 10,
    kinds: [...COACHBUILT],
  },
  lowProfile: {
    ...usual,
    dimensions: size(6.95, 2.3, 2.9, 3.8, 2),
    body: shell(11.5, 22, 70, 380),
    litresPer100Km: 11.5,
    kinds: [...COACHBUILT],
  },
  overcab: {
    ...usual,
    dimensions: size(7, 2.3, 3.1, 4, 2.1),
    body: shell(12, 25, 78, 400),
    litresPer100Km: 12.5,
    kinds: [...COACHBUILT],
  },
  aClass: {
    ...usual,
    dimensions: size(7.4, 2.3, 2.95, 4.1, 2.2),
    body: shell(13, 27, 75, 450),
    litresPer100Km: 12.5,
    kinds: [...COACHBUILT],
  },
};
