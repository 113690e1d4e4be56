/**
 * Estimates a monthly value at a place from stations: weights 1/d + 20 km/d² of the 8 nearest that have the value
 * (d in km, at least 5), each first carried to the place along a local gradient. The gradient is fitted by
 * weighted least squares with a Gaussian of 400 km and held small by a ridge.
 */
const NEAREST = 8;
const NEAR_KM = 20;
const FLOOR_KM = 5;
const REACH_KM = 400;
const RIDGE_KM2 = 0.3 * 100 ** 2;
const RAD = Math.PI / 180;
const KM_PER_DEG = 111;

export interface SurfacePoint<T> {
  readonly of: T;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Great-circle distance, km. */
export function distanceKm(aLat: number, aLon: number, bLat: number, bLon: number): number {
  const h =
    Math.sin(((bLat - aLat) * RAD) / 2) ** 2 +
    Math.cos(aLat * RAD) * Math.cos(bLat * RAD) * Math.sin(((bLon - aLon) * RAD) / 2) ** 2;
  return 12742 * Math.asin(Math.sqrt(Math.min(1, h)));
}

export interface Near<T> {
  readonly of: T;
  readonly distanceKm: number;
  /** north and east of the place, km */
  readonly northKm: number;
  readonly eastKm: number;
}

/** All points by their distance from a place, nearest first. */
export function byDistance<T>(
  latitudeDeg: number,
  longitudeDeg: number,
  points: readonly SurfacePoint<T>[],
): readonly Near<T>[] {
  return points
    .map((point) => ({
      of: point.of,
      distanceKm: distanceKm(latitudeDeg, longitudeDeg, point.latitudeDeg, point.longitudeDeg),
      northKm: (point.latitudeDeg - latitudeDeg) * KM_PER_DEG,
      eastKm: (point.longitudeDeg - longitudeDeg) * KM_PER_DEG * Math.cos(latitudeDeg * RAD),
    }))
    .sort((a, b) => a.distanceKm - b.distanceKm);
}

/** The nearest stations that have the value, with weights that add to 1. */
export function weigh<T>(near: readonly Near<T>[], value: (of: T) => number | null) {
  const used = near.filter((at) => value(at.of) !== null).slice(0, NEAREST);
  const raw = used.map(({ distanceKm: d }) => {
    const km = Math.max(FLOOR_KM, d);
    return 1 / km + NEAR_KM / km ** 2;
  });
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  return used.map((at, k) => ({ at, weight: raw[k]! / total }));
}

/** The value at the place; null where no station has one. */
export function estimate<T>(near: readonly Near<T>[], value: (of: T) => number | null): number | null {
  const used = weigh(near, value);
  if (used.length === 0) return null;
  const [perNorth, perEast] = gradient(near, value);
  return used.reduce(
    (sum, { at, weight }) => sum + weight * (value(at.of)! - perNorth * at.northKm - perEast * at.eastKm),
    0,
  );
}

/** Local change per km north and per km east. */
function gradient<T>(near: readonly Near<T>[], value: (of: T) => number | null): readonly [number, number] {
  let [w, n, e, v, nn, ee, ne, nv, ev] = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const at of near) {
    const y = value(at.of);
    if (y === null || at.distanceKm > 4 * REACH_KM) continue;
    const g = Math.exp(-((at.distanceKm / REACH_KM) ** 2));
    w += g;
    n += g * at.northKm;
    e += g * at.eastKm;
    v += g * y;
    nn += g * at.northKm * at.northKm;
    ee += g * at.eastKm * at.eastKm;
    ne += g * at.northKm * at.eastKm;
    nv += g * at.northKm * y;
    ev += g * at.eastKm * y;
  }
  if (!(w > 0)) return [0, 0];
  // centred normal equations of the two slopes, with the ridge on the diagonal
  const a = nn - (n * n) / w + RIDGE_KM2 * w;
  const b = ne - (n * e) / w;
  const c = ee - (e * e) / w + RIDGE_KM2 * w;
  const p = nv - (n * v) / w;
  const q = ev - (e * v) / w;
  const determinant = a * c - b * b;
  return [(p * c - q * b) / determinant, (a * q - b * p) / determinant];
}
