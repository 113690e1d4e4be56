import type { Draws } from "../season/draws.ts";

const DAY_MS = 86_400_000;
const dayOfYear = (date: string) =>
  (Date.parse(`${date}T00:00Z`) - Date.parse(`${date.slice(0, 4)}-01-01T00:00Z`)) / DAY_MS;

/**
 * The outside temperature of each day of a trip, °C, mean of day and night: one wave a year over Britain,
 * colder by height and to the north, with spells of some days. It knows nothing of the engine's climate.
 */
export function roughDays(
  draws: Draws,
  days: readonly { readonly date: string; readonly latitudeDeg: number; readonly elevationM: number }[],
): number[] {
  let spell = (draws.share() + draws.share() + draws.share() - 1.5) * 5;
  return days.map(({ date, latitudeDeg, elevationM }) => {
    spell = 0.65 * spell + (draws.share() + draws.share() - 1) * 4;
    const wave = -6.2 * Math.cos((2 * Math.PI * (dayOfYear(date) - 25)) / 365);
    return 10 + wave - 0.5 * (latitudeDeg - 54) - 0.0065 * elevationM + spell;
  });
}
