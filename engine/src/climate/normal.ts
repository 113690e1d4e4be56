import { CLIMATE_STATIONS } from "./anchors.generated.ts";
import type { ClimateStation } from "./station.ts";
import { byDistance, estimate, type Near, weigh } from "./surface.ts";

/** Fall of temperature with height by month, K/km. */
const LAPSE_K_PER_KM = [4.5, 5.2, 6.0, 6.4, 6.5, 6.5, 6.5, 6.4, 6.0, 5.4, 5.0, 4.5] as const;

export interface ClimatePlace {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
}

export interface StationWeight {
  readonly name: string;
  readonly distanceKm: number;
  /** share of the temperature estimate, 0 to 1 */
  readonly weight: number;
  /** the station's temperatures are from memory and unchecked */
  readonly fromMemory: boolean;
}

export interface ClimateNormal {
  /** mean, mean daily minimum and mean daily maximum of the air, °C */
  readonly meanC: number;
  readonly minC: number;
  readonly maxC: number;
  /** monthly mean of global over extraterrestrial irradiation; null where no station near has one */
  readonly clearness: number | null;
  /** nearest first */
  readonly stations: readonly StationWeight[];
}

const isFromMemory = (station: ClimateStation) => station.source.startsWith("from memory");

function stationsNear(place: ClimatePlace, without?: string): readonly Near<ClimateStation>[] {
  const points = CLIMATE_STATIONS.filter((station) => station.name !== without).map((of) => ({
    of,
    latitudeDeg: of.latitudeDeg,
    longitudeDeg: of.longitudeDeg,
  }));
  return byDistance(place.latitudeDeg, place.longitudeDeg, points);
}

/**
 * Monthly normals at a place, month 1 to 12. `without` leaves one station out, for checking the model.
 * Elevation in metres; temperatures are reduced to sea level and raised to the place with the month's lapse rate.
 */
export function climateNormal(
  at: ClimatePlace & { readonly month: number },
  without?: string,
): ClimateNormal {
  return monthNormal(stationsNear(at, without), at, at.month - 1);
}

/** The twelve normals of a place, January first. */
export function climateYear(place: ClimatePlace): readonly ClimateNormal[] {
  const near = stationsNear(place);
  return Array.from({ length: 12 }, (_, month) => monthNormal(near, place, month));
}

function monthNormal(
  near: readonly Near<ClimateStation>[],
  place: ClimatePlace,
  month: number,
): ClimateNormal {
  const lapse = LAPSE_K_PER_KM[month];
  if (lapse === undefined) throw new RangeError(`climate: no month ${month + 1}`);
  const at = (pick: (station: ClimateStation) => number | null | undefined) =>
    estimate(near, (station) => {
      const value = pick(station) ?? null;
      return value === null ? null : value + (lapse * station.elevationM) / 1000;
    })! -
    (lapse * place.elevationM) / 1000;
  const meanC = at((station) => station.meanC[month]);
  const clearness = estimate(near, (station) => station.clearness[month] ?? null);
  return {
    meanC,
    // far from all stations the gradients may cross; the order of the three is kept
    minC: Math.min(
      meanC,
      at((station) => station.minC[month]),
    ),
    maxC: Math.max(
      meanC,
      at((station) => station.maxC[month]),
    ),
    clearness: clearness === null ? null : Math.max(0.05, Math.min(0.8, clearness)),
    stations: weigh(near, (station) => station.meanC[month] ?? null).map(({ at: station, weight }) => ({
      name: station.of.name,
      distanceKm: station.distanceKm,
      weight,
      fromMemory: isFromMemory(station.of),
    })),
  };
}
