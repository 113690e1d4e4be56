import { isFree, meetings, type Seating, seat, unseat } from "./seating.ts";

/** Moves a hire to another vehicle where it meets nobody; false where it cannot go there. */
export function relocate(seating: Seating, hire: number, vehicle: number): boolean {
  if (seating.on[hire] === vehicle || !isFree(seating, hire, vehicle)) return false;
  unseat(seating, hire);
  seat(seating, hire, vehicle);
  return true;
}

/**
 * Exchanges a hire and what it meets on another vehicle, what those meet on its own, and so on: the smallest exchange
 * between two vehicles that holds this hire. False where it is longer than `limit` or somebody may not go across.
 */
export function exchange(seating: Seating, hire: number, other: number, limit: number): boolean {
  const { on } = seating;
  const own = on[hire]!;
  if (own === other || !mayGo(seating, hire, other)) return false;
  const group = [hire];
  const has = new Set(group);
  for (let k = 0; k < group.length; k++) {
    const across = on[group[k]!] === own ? other : own;
    for (const met of meetings(seating, group[k]!, across)) {
      if (has.has(met)) continue;
      if (group.length >= limit || !mayGo(seating, met, across === own ? other : own)) return false;
      has.add(met);
      group.push(met);
    }
  }
  const to = group.map((each) => (on[each] === own ? other : own));
  for (const each of group) unseat(seating, each);
  group.forEach((each, k) => {
    seat(seating, each, to[k]!);
  });
  return true;
}

const mayGo = ({ model }: Seating, hire: number, vehicle: number) =>
  model.may[hire * model.vehicles + vehicle] === 1;
