import type { Schemas } from "../../../api/client.ts";

type HireStock = Schemas["HireStock"];
export type Ask = HireStock["asks"][number];
/** Number wanted of each size, by the kind of thing. */
export type Sizes = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** Sizes that were asked for already. */
export function sizesIn(asks: readonly Ask[]): Sizes {
  const sizes: Record<string, Record<string, number>> = {};
  for (const { kind, size, count } of asks) {
    if (size === undefined) continue;
    const of = sizes[kind] ?? {};
    of[size] = (of[size] ?? 0) + count;
    sizes[kind] = of;
  }
  return sizes;
}

export const sizedCount = (of: Readonly<Record<string, number>> | undefined): number =>
  Object.values(of ?? {}).reduce((sum, count) => sum + count, 0);

/** The asks with the sizes of the quote's extras in place of those before; asks of other kinds stay. */
export function asksWith(asks: readonly Ask[], sizes: Sizes, extras: readonly string[]): readonly Ask[] {
  const others = asks.filter(({ kind, size }) => size === undefined || !extras.includes(kind));
  const sized = extras.flatMap((kind) =>
    Object.entries(sizes[kind] ?? {}).flatMap(([size, count]) => (count > 0 ? [{ kind, size, count }] : [])),
  );
  return [...others, ...sized];
}
