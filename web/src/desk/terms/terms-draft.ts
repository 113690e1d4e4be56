import type { Schemas } from "../../api/client.ts";

export type TermsDraft = Schemas["Terms"];
export type Season = TermsDraft["seasons"][number];

export interface PieceProps {
  readonly value: TermsDraft;
  readonly change: (part: Partial<TermsDraft>) => void;
  readonly failure: unknown;
}

/** The list with one entry moved before the one above it. */
export function raised<T>(list: readonly T[], place: number): T[] {
  const moved = list[place];
  if (moved === undefined || place === 0) return [...list];
  const rest = list.filter((_, k) => k !== place);
  return [...rest.slice(0, place - 1), moved, ...rest.slice(place - 1)];
}

export const pounds = (pence: number): number => pence / 100;
export const penceOf = (amount: number | null): number => Math.round((amount ?? 0) * 100);

/** A name of its own for a new version: the day from which it holds. */
export const versionName = (validFrom: string): string => `terms-${validFrom}`;

export const MONEY_FORMAT: Intl.NumberFormatOptions = { minimumFractionDigits: 0, maximumFractionDigits: 2 };
