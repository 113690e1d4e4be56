import type { Words } from "@setfair/words";
import type { ErasureHold } from "./erasure-holds.ts";

/** What holds an erasure, in words: with its hire, its sum and its day. */
export function holdText(
  { code, until, facts }: Pick<ErasureHold, "code" | "until" | "facts">,
  words: Words,
): string {
  const { pence, ...rest } = facts;
  return words.say(`erasure.hold.${code}`, {
    ...rest,
    money: words.moneyText({ currency: "GBP", pence: Number(pence ?? 0) }),
    until: until === null ? "none" : words.dateText(until, "full"),
  });
}
