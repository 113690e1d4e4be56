import * as z from "zod/mini";
import { climateNormal } from "../climate/normal.ts";
import { between } from "./args.ts";
import { entry } from "./entry.ts";

export const CLIMATE_FORMULAS = [
  entry(
    "climate.normal",
    "°C; clearness –",
    "climate-normals",
    "1991–2020",
    {
      latitudeDeg: between(33, 72),
      longitudeDeg: between(-26, 41),
      elevationM: between(-10, 4000),
      month: z.int().check(z.minimum(1), z.maximum(12)),
    },
    (a) => {
      const { meanC, minC, maxC, clearness } = climateNormal(a);
      return { meanC, minC, maxC, clearness };
    },
  ),
];
