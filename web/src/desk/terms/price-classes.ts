import type { Season } from "./terms-draft.ts";

/** Every season with one more class, at the price of its first class until another is typed. */
export function withClass(seasons: readonly Season[], id: string): Season[] {
  return seasons.map((season) => {
    const [first = 0] = Object.values(season.nightPence);
    return { ...season, nightPence: { ...season.nightPence, [id]: season.nightPence[id] ?? first } };
  });
}

/** Every season without the prices of a class. */
export function withoutClass(seasons: readonly Season[], id: string): Season[] {
  return seasons.map((season) => {
    const { [id]: _, ...nightPence } = season.nightPence;
    return { ...season, nightPence };
  });
}
