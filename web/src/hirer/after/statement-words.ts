import type { Figure, Settlement, SettlementLine } from "@setfair/engine";
import { figureText, moneyText, say, t } from "../../parts/words.ts";
import { aboutWords } from "./part-words.ts";

const pounds = (pence: number): string => moneyText({ currency: "GBP", pence });
const textIn = (inputs: Figure["inputs"], name: string): string => String(inputs[name] ?? "");

export const lineTitle = (line: Pick<SettlementLine, "code" | "about">): string =>
  say(`settlement.${line.code}`, { about: aboutWords(line.about) });

/** One figure of the working in a hirer's words. */
function workingText({ value, unit, inputs, basis }: Figure): string {
  if (unit === "share") {
    const { ageYears, lifeYears } = inputs;
    return t("hirer.statement.work.share", {
      share: figureText({ value, unit }),
      age: figureText({ value: Number(ageYears), unit: "" }),
      life: figureText({ value: Number(lifeYears), unit: "" }),
    });
  }
  if (unit.startsWith("pence/"))
    return t("hirer.statement.work.per", {
      rate: figureText({ value, unit }),
      atMost: inputs.atMost === true ? "yes" : "no",
    });
  if (unit !== "pence") return figureText({ value, unit });
  const amount = pounds(value);
  if (inputs.loss !== undefined)
    return t("hirer.statement.work.loss", {
      amount,
      loss: textIn(inputs, "loss"),
      about: textIn(inputs, "about"),
    });
  if (inputs.of === "atMost") return t("hirer.statement.work.atMost", { amount });
  const from = textIn(inputs, "from") || (basis === "measured" ? "invoice" : "estimate");
  if (inputs.of === "labour")
    return t("hirer.statement.work.labour", { amount, from, labour: textIn(inputs, "labour") });
  if (inputs.of === "parts") return t("hirer.statement.work.parts", { amount, from });
  if (inputs.from !== undefined) return t("hirer.statement.work.repair", { amount, from });
  return t(inputs.of === undefined ? "hirer.statement.work.new" : "hirer.statement.work.list", { amount });
}

/**
 * The unit of the two readings behind a quantity; null where it is not known. Settlements from before the unit was kept are
 * read only where the readings plainly are in the quantity's own.
 */
function readingUnit({ value, unit, inputs }: Figure): string | null {
  const { out, back, readIn } = inputs;
  if (typeof readIn === "string") return readIn;
  const isOwn =
    typeof out === "number" && typeof back === "number" && Math.abs(Math.abs(out - back) - value) < 1e-6;
  return isOwn ? unit : null;
}

function quantityText(quantity: Figure): string {
  const { value, unit, inputs } = quantity;
  const amount = figureText({ value, unit });
  const { out, back, tankLitres } = inputs;
  const measured = t("hirer.statement.work.measured", { amount });
  const readIn = readingUnit(quantity);
  if (typeof out !== "number" || typeof back !== "number" || readIn === null) return measured;
  const read = (each: number) => figureText({ value: each, unit: readIn });
  const ofTank = readIn === "share" && typeof tankLitres === "number";
  const readings = t("hirer.statement.work.readings", {
    out: read(out),
    back: read(back),
    of: ofTank ? figureText({ value: tankLitres, unit: "L" }) : "none",
  });
  return `${measured} · ${readings}`;
}

/** How the sum of a line comes about, one step a line; empty where there is nothing to work out. */
export const lineWorking = (line: SettlementLine): readonly string[] => [
  ...(line.quantity === null ? [] : [quantityText(line.quantity)]),
  ...line.working.map(workingText),
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Why nothing, or less, is charged; null where the charge speaks for itself. */
export const lineReason = ({ because }: SettlementLine): string | null =>
  because === null || because === "hirer" ? null : `${capital(say(`settlement.because.${because}`))}.`;

/** The sums under the lines; those that are nothing are left out but for the total and what goes back. */
export function statementSums(
  result: Settlement,
): readonly { readonly id: string; readonly name: string; readonly amount: string }[] {
  const rows = [
    "total",
    "depositHeld",
    "depositKept",
    "depositWithheld",
    "depositReturned",
    "stillOwed",
  ] as const;
  return rows
    .filter((id) => id === "total" || id === "depositReturned" || result[id].pence !== 0)
    .map((id) => ({ id, name: t(`settlement.${id}`), amount: moneyText(result[id]) }));
}
