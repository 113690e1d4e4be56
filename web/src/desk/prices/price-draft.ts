import type { Schemas } from "../../api/client.ts";
import { thingName } from "./price-words.ts";

type Prices = Schemas["FirmPrices"];
type Lists = Pick<Schemas["PutFirmPrices"], "kit" | "damage">;
type KitValue = Schemas["KitValues"][string];
export type RepairPrice = Schemas["RepairPrice"];

/** A thing and what it is worth new; `id` is its name in the terms, `name` what people call it. */
export interface KitLine extends KitValue {
  readonly id: string;
  readonly name: string;
}
/** A repair and what it costs; `id` tells it apart: what, how damaged, up to which size. */
export interface RepairLine extends RepairPrice {
  readonly id: string;
  readonly name: string;
}
export interface PriceDraft {
  /** first day of the new lists, `YYYY-MM-DD`; "" while none is entered */
  readonly validFrom: string;
  readonly kit: readonly KitLine[];
  readonly repairs: readonly RepairLine[];
}

export const repairId = ({ of, kind, upToMm }: Pick<RepairPrice, "of" | "kind" | "upToMm">): string =>
  `${of} ${kind} ${upToMm ?? "any"}`;

export const kitLine = (id: string, { newPence, lifeYears, leastShare }: KitValue): KitLine => ({
  id,
  name: thingName(id),
  newPence,
  lifeYears,
  leastShare,
});
export const repairLine = (price: RepairPrice): RepairLine => {
  const { of, kind, upToMm, pence, part, lifeYears, leastShare } = price;
  const size = upToMm === undefined ? {} : { upToMm };
  return { id: repairId(price), name: thingName(of), of, kind, ...size, pence, part, lifeYears, leastShare };
};

/** The lists as they stand, to be changed from a day on. */
export const draftOf = ({ kit, damage }: Lists, validFrom: string): PriceDraft => ({
  validFrom,
  kit: Object.entries(kit).map(([id, value]) => kitLine(id, value)),
  repairs: damage.map(repairLine),
});
export const draftNow = (
  { kit, repairs }: Pick<Prices, "kit" | "repairs">,
  validFrom: string,
): PriceDraft => ({
  validFrom,
  kit: kit.map((each) => kitLine(each.id, each)),
  repairs: repairs.map(repairLine),
});

/** What is sent: the lists without what is for people. */
export const bodyOf = ({ validFrom, kit, repairs }: PriceDraft): Schemas["PutFirmPrices"] => ({
  validFrom,
  kit: Object.fromEntries(kit.map(({ id, name: _, ...value }) => [id, value])),
  damage: repairs.map(({ id: _, name: __, ...price }) => price),
});

/** The list with a line put in the place of the one that is told apart by `place`, or at its end; null takes it out. */
export function withLine<T extends { readonly id: string }>(
  list: readonly T[],
  place: string | null,
  line: T | null,
): readonly T[] {
  if (place === null) return line === null ? list : [...list, line];
  return list.flatMap((each) => (each.id !== place ? [each] : line === null ? [] : [line]));
}

/** Lines that a file brings: each takes the place of the like one, the others come after; what is not in it stays. */
export function withFile<T extends { readonly id: string }>(
  list: readonly T[],
  read: readonly T[],
): readonly T[] {
  return read.reduce<readonly T[]>(
    (all, line) => withLine(all, all.some(({ id }) => id === line.id) ? line.id : null, line),
    list,
  );
}

export type LineState = "same" | "new" | "changed";
/** How a line stands to the one that is kept. */
export function stateOf<T extends { readonly id: string }>(line: T, kept: readonly T[]): LineState {
  const before = kept.find(({ id }) => id === line.id);
  if (before === undefined) return "new";
  return JSON.stringify(before) === JSON.stringify(line) ? "same" : "changed";
}

/** How many lines are new, changed or taken out. */
export function countChanges(draft: PriceDraft, kept: PriceDraft): number {
  const count = <T extends { readonly id: string }>(now: readonly T[], before: readonly T[]) =>
    now.filter((line) => stateOf(line, before) !== "same").length +
    before.filter(({ id }) => now.every((line) => line.id !== id)).length;
  return count(draft.kit, kept.kit) + count(draft.repairs, kept.repairs);
}
