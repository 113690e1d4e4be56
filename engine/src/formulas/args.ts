import * as z from "zod/mini";

/** A number within a closed range; NaN and the infinities are refused. */
export const between = (min: number, max: number) => z.number().check(z.minimum(min), z.maximum(max));
/** A number above 0 and at most `max`. */
export const above0 = (max: number) => z.number().check(z.positive(), z.maximum(max));
export const latitudeDeg = between(-90, 90);
export const longitudeDeg = between(-180, 180);
export const dayOfYear = z.int().check(z.minimum(1), z.maximum(366));
/** the range over which the saturation equations were fitted */
export const lpgTemperatureC = between(-50, 65);
export const lpgFuel = z.enum(["propane", "butane"]);
