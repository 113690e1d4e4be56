import type { Source } from "./source.ts";

/** Sources of the climate normals; credited in NOTICE. */
export const CLIMATE_SOURCES = {
  "climate-normals": {
    title:
      "Monthly normals 1991–2020 of the Met Office, Met Éireann, DWD, CM SAF and AEMET, with rows from memory marked so; nearest stations weighted by distance, local gradient, lapse rate",
    how: "read",
  },
  "climate-spread": {
    title: "Daily spread computed from daily series of 24 European lowland stations",
    how: "read",
  },
} as const satisfies Record<string, Source>;
