import { BODY_STYLES } from "@setfair/engine";

/** One field of the vehicle itself; what is fitted brings its own fields with it. */
export interface OwnField {
  readonly path: string;
  readonly type: "text" | "number" | "date" | "choice" | "flag" | "share";
  readonly unit?: string;
  readonly options?: readonly string[];
  /** a word on where it is found, under `field.note.<path>` */
  readonly hasNote?: boolean;
}

const metres = (path: string, hasNote = false): OwnField => ({ path, type: "number", unit: "m", hasNote });
const kg = (path: string, hasNote = false): OwnField => ({ path, type: "number", unit: "kg", hasNote });

export const IDENTITY: readonly OwnField[] = [
  { path: "name", type: "text", hasNote: true },
  { path: "registration", type: "text" },
  { path: "firstRegistered", type: "date" },
];
export const FROM: OwnField = { path: "validFrom", type: "date", hasNote: true };
export const KIND: readonly OwnField[] = [
  { path: "bodyStyle", type: "choice", options: BODY_STYLES },
  { path: "fuel", type: "choice", options: ["diesel", "petrol", "electric", "hydrogen"] },
  { path: "category", type: "choice", options: ["M1", "N1"] },
  { path: "emissionClass", type: "text" },
  { path: "consumption.litresPer100Km", type: "number", unit: "L/100 km" },
];
export const DIMENSIONS: readonly OwnField[] = [
  metres("dimensions.lengthM"),
  metres("dimensions.widthM", true),
  metres("dimensions.heightM", true),
  metres("dimensions.wheelbaseM"),
  metres("dimensions.rearOverhangM", true),
];
export const SHELL: readonly OwnField[] = [
  { path: "body.floorAreaM2", type: "number", unit: "m²" },
  { path: "body.volumeM3", type: "number", unit: "m³" },
  { path: "body.lossWK", type: "number", unit: "W/K" },
  { path: "body.capacityWhK", type: "number", unit: "Wh/K" },
  { path: "body.airChangesPerHour", type: "number", unit: "1/h" },
];
export const PLATE: readonly OwnField[] = [
  kg("masses.mamKg", true),
  kg("masses.technicalMaxKg", true),
  kg("masses.axleMaxKg.front"),
  kg("masses.axleMaxKg.rear"),
];
export const RUNNING: readonly OwnField[] = [kg("masses.miroKg", true), kg("masses.miroFrontKg", true)];
export const BASIS: readonly OwnField[] = [
  { path: "masses.miroBasis.fuelShare", type: "share" },
  kg("masses.miroBasis.driverKg"),
  { path: "masses.miroBasis.waterShare", type: "share" },
  { path: "masses.miroBasis.lpgCylinders", type: "number" },
  kg("masses.unladenKg", true),
];

/** Every field of the vehicle itself that must be answered, by its path. */
export const OWN_PATHS: readonly string[] = [
  ...IDENTITY,
  FROM,
  ...KIND,
  ...DIMENSIONS,
  ...SHELL,
  ...PLATE,
  ...RUNNING,
  ...BASIS.filter(({ path }) => path !== "masses.unladenKg"),
].map(({ path }) => path);
