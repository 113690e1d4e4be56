import type { Settlement, SettlementLine } from "@setfair/engine";
import type { Words } from "@setfair/words";

const aboutText = (about: string, words: Words): string => {
  const charge = `charge.${about}`;
  return words.has(about) ? words.t(about) : words.has(charge) ? words.t(charge) : about;
};

/** What a line of the settlement charges, or does not. */
export const lineName = (line: SettlementLine, words: Words): string =>
  words.t(`settlement.${line.code}`, { about: aboutText(line.about, words) });

/** How its sum comes about, or why nothing is charged, and how much evidence there is. */
export const lineWorking = (line: SettlementLine, words: Words): string =>
  [
    line.quantity === null ? "" : words.figureText(line.quantity),
    line.because === null ? "" : words.t(`settlement.because.${line.because}`),
    ...line.working.map((figure) => words.figureText(figure)),
    words.t("settlement.evidence", {
      records: line.evidence.records.length,
      photographs: line.evidence.photographs.length,
    }),
    line.disputed ? words.t("settlement.disputed") : "",
  ]
    .filter((text) => text !== "")
    .join(" · ");

/** The sums under the lines; those that are nothing are left out but for the total and what goes back. */
export function settlementTotals(result: Settlement, words: Words): readonly (readonly [string, string])[] {
  const rows = [
    "overExcess",
    "total",
    "depositHeld",
    "depositKept",
    "depositWithheld",
    "depositReturned",
    "stillOwed",
  ] as const;
  return rows
    .filter((id) => result[id].pence !== 0 || id === "total" || id === "depositReturned")
    .map((id) => [words.t(`settlement.${id}`), words.moneyText(result[id])] as const);
}
