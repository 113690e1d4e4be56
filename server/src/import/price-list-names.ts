/** What a lost thing is worth new, and what a repair costs. */
export const PRICE_LISTS = ["kit", "repairs"] as const;
export type PriceList = (typeof PRICE_LISTS)[number];
