import { has, say, t } from "../../parts/words.ts";

/** Where the name of a part, a check or a kind of system stands among the words; the first that is there. */
const PREFIXES = ["part.", "check.", "thing.", "firmPrices.any."] as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The name of what a price is for; its id where it has none. */
export function thingName(id: string): string {
  const found = PREFIXES.map((prefix) => `${prefix}${id}`).find(has);
  return found === undefined ? id : capital(say(found));
}

export const pounds = (pence: number) => ({ currency: "GBP", pence }) as const;
export const percentOf = (share: number): number => Math.round(share * 10_000) / 100;
export const shareOf = (percent: number): number => Math.round(percent * 100) / 10_000;

/** How value is lost: over so many years, to so much at least. */
export const wearText = ({ lifeYears, leastShare }: { lifeYears: number; leastShare: number }): string =>
  t("firmPrices.wear", { years: lifeYears, percent: percentOf(leastShare) });
