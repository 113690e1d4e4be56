import { has, say, t } from "../../parts/words.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The name of what a price is for, a part, a check, a kind of system or anything else; its id where it has none. */
export function thingName(id: string): string {
  const found = [`part.${id}`, `check.${id}`, `thing.${id}`, `firmPrices.any.${id}`].find(has);
  return found === undefined ? id : capital(say(found));
}

export const pounds = (pence: number) => ({ currency: "GBP", pence }) as const;
export const percentOf = (share: number): number => Math.round(share * 10_000) / 100;
export const shareOf = (percent: number): number => Math.round(percent * 100) / 10_000;

interface Damage {
  readonly kind: string;
  readonly upToMm?: number | undefined;
}

/** Kind and size of damage; without a size it is what is larger than the like lines, or any size. */
export function damageText({ kind, upToMm }: Damage, all: readonly Damage[] = []): string {
  const isSized = all.some((each) => each.kind === kind && each.upToMm !== undefined);
  const size = upToMm !== undefined ? "upTo" : isSized ? "larger" : "any";
  return t("firmPrices.damage", { kind: t("firmPrices.kind", { kind }), size, mm: upToMm ?? 0 });
}

/** How value is lost: over so many years, to so much at least. */
export const wearText = ({ lifeYears, leastShare }: { lifeYears: number; leastShare: number }): string =>
  t("firmPrices.wear", { years: lifeYears, percent: percentOf(leastShare) });
