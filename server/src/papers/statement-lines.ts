import type { Figure, Settlement, SettlementLine } from "@setfair/engine";
import type { Words } from "@setfair/words";

/** The name of the part, the check or the charge that a line is about; its id where it has none. */
function aboutText(about: string, words: Words): string {
  const id = [`part.${about}`, `check.${about}`, about, `charge.${about}`].find((each) => words.has(each));
  return id === undefined ? about : words.say(id);
}

/** What a line of the settlement charges, or does not. */
export const lineName = (line: SettlementLine, words: Words): string =>
  words.t(`settlement.${line.code}`, { about: aboutText(line.about, words) });

/** One step of the working; a loss and the most that the terms allow are named. */
function stepText(figure: Figure, words: Words): string {
  const { loss, about, of, atMost } = figure.inputs;
  const amount = words.figureText(figure);
  if (loss !== undefined)
    return words.t("hirer.statement.work.loss", { loss: String(loss), about: String(about), amount });
  if (of === "atMost") return words.t("hirer.statement.work.atMost", { amount });
  return atMost === true ? words.t("hirer.statement.work.per", { rate: amount, atMost: "yes" }) : amount;
}

/** How its sum comes about, or why nothing is charged, and how much evidence there is. */
export const lineWorking = (line: SettlementLine, words: Words): string =>
  [
    line.quantity === null ? "" : words.figureText(line.quantity),
    line.because === null ? "" : words.t(`settlement.because.${line.because}`),
    ...line.working.map((figure) => stepText(figure, words)),
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
