import * as z from "zod/mini";

/** Body styles of the trade (docs/words.md). */
export const BODY_STYLES = [
  "panelVanConversion",
  "elevatingRoofCampervan",
  "lowProfile",
  "overcab",
  "aClass",
  "campervan",
] as const;

const positive = (max: number) => z.number().check(z.positive(), z.maximum(max));
const share = z.number().check(z.minimum(0), z.maximum(1));
const isoDate = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));

/** One fitted system; `spec` is checked by the system's own schema when the description is parsed. */
const fittedSystem = z.strictObject({
  /** unique within the vehicle */
  id: z.string().check(z.minLength(1), z.maxLength(40)),
  kind: z.string(),
  spec: z.record(z.string(), z.unknown()),
});

/**
 * A vehicle, described once. Lengths in metres, masses in kilograms; x is measured behind the front axle.
 * Everything else follows from this and the hire in hand.
 */
export const vehicleDescriptionSchema = z.strictObject({
  id: z.string().check(z.minLength(1), z.maxLength(60)),
  /** what the depot calls it */
  name: z.string().check(z.minLength(1), z.maxLength(60)),
  registration: z.string().check(z.minLength(1), z.maxLength(12)),
  bodyStyle: z.enum(BODY_STYLES),
  /** the day from which this version of the description holds */
  validFrom: isoDate,
  firstRegistered: isoDate,
  fuel: z.enum(["diesel", "petrol", "electric", "hydrogen"]),
  category: z.enum(["M1", "N1"]),
  emissionClass: z.string().check(z.maxLength(20)),
  dimensions: z.strictObject({
    lengthM: positive(12),
    widthM: positive(2.6),
    heightM: positive(4.2),
    wheelbaseM: positive(7),
    rearOverhangM: positive(4),
  }),
  masses: z.strictObject({
    /** plated maximum mass; the licence and most laws use this */
    mamKg: positive(7500),
    /** maximum that the chassis permits; may exceed the plated one */
    technicalMaxKg: positive(7500),
    /** mass in running order, with what it includes */
    miroKg: positive(7500),
    miroBasis: z.strictObject({
      fuelShare: share,
      driverKg: z.number().check(z.minimum(0), z.maximum(150)),
      waterShare: share,
      lpgCylinders: z.int().check(z.minimum(0), z.maximum(4)),
      /** measured on a weighbridge; otherwise it may be 5 % out (Regulation (EU) 2021/535) */
      weighed: z.boolean(),
      /** standard deviation of a weighed mass, kg; a usual one where left out */
      sdKg: z.optional(z.number().check(z.minimum(0), z.maximum(200))),
      /** day of the weighbridge ticket that the masses come from */
      weighedOn: z.optional(isoDate),
    }),
    /** share of the mass in running order on the front axle, kg; the rest is on the rear */
    miroFrontKg: positive(5000),
    unladenKg: z.optional(positive(7500)),
    axleMaxKg: z.strictObject({ front: positive(5000), rear: positive(5000) }),
    /** fitted after the mass in running order was stated */
    options: z.array(
      z.strictObject({
        name: z.string(),
        massKg: positive(500),
        behindFrontAxleM: z.number().check(z.minimum(-1.5), z.maximum(9)),
      }),
    ),
  }),
  /** the living part as one thermal node */
  body: z.strictObject({
    floorAreaM2: positive(25),
    volumeM3: positive(50),
    /** conductance of the shell, W/K */
    lossWK: positive(400),
    /** heat capacity, Wh/K */
    capacityWhK: positive(3000),
    airChangesPerHour: positive(10),
  }),
  consumption: z.strictObject({ litresPer100Km: z.number().check(z.minimum(0), z.maximum(40)) }),
  systems: z.array(fittedSystem).check(z.maxLength(60)),
});

export type VehicleDescription = z.infer<typeof vehicleDescriptionSchema>;
export type FittedSystem = VehicleDescription["systems"][number];
