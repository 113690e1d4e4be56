import type { Figure } from "@setfair/engine";

/** What a figure needs to be written: its value and its unit. */
export type Written = Pick<Figure, "value" | "unit">;

const NARROW = " ";
const SHARES = new Set(["share", "chance", "probability", "1"]);
const BARE = new Set(["", "-", "count", "number"]);

/** Digits that tell something: 3 significant below 1000, whole above; mass and money-like units whole above 10. */
function digits(value: number, unit: string): 0 | 1 | 2 {
  const size = Math.abs(value);
  if (size >= 100 || (unit === "kg" && size >= 20) || unit === "min") return 0;
  return size >= 10 || unit === "°C" ? 1 : 2;
}

/** Made once for each language and number of digits: to make one takes far longer than to write with it. */
const writers = new Map<string, Intl.NumberFormat>();

function writer(locale: string, maximumFractionDigits: 0 | 1 | 2): Intl.NumberFormat {
  const key = `${locale} ${maximumFractionDigits}`;
  const made = writers.get(key) ?? new Intl.NumberFormat(locale, { maximumFractionDigits });
  writers.set(key, made);
  return made;
}

export const isShare = (unit: string): boolean => SHARES.has(unit);

/** The number alone, in the language's digits; a share (0 to 1) becomes per cent without the sign. */
export function numberText(locale: string, { value, unit }: Written): string {
  const shown = isShare(unit) ? value * 100 : value;
  const text = writer(locale, isShare(unit) ? 0 : digits(shown, unit)).format(shown);
  return text === "-0" ? "0" : text.replace("-", "−");
}

/**
 * Value with unit, rounded once, here. `named` gives the words of units that have a plural or a message of
 * their own; other units are written as symbols.
 */
export function writeFigure(
  locale: string,
  figure: Written,
  named: (unit: string, value: number, text: string) => string | null,
): string {
  if (figure.unit === "pence")
    return writeMoney(locale, { currency: "GBP", pence: Math.round(figure.value) });
  if (figure.unit === "GBP")
    return writeMoney(locale, { currency: "GBP", pence: Math.round(figure.value * 100) });
  const rate = figure.unit.startsWith("pence/");
  const text = rate
    ? writeMoney(locale, { currency: "GBP", pence: Math.round(figure.value) })
    : numberText(locale, figure);
  if (isShare(figure.unit) || figure.unit === "%") return `${text}${NARROW}%`;
  if (BARE.has(figure.unit)) return text;
  return (
    named(figure.unit, figure.value, text) ??
    (rate ? `${text}${figure.unit.slice("pence".length)}` : `${text}${NARROW}${figure.unit}`)
  );
}

/** Whole pence as money of its currency; whole pounds without pence. */
export function writeMoney(
  locale: string,
  money: { readonly currency: string; readonly pence: number },
): string {
  const whole = money.pence % 100 === 0;
  return new Intl.NumberFormat(locale, {
    style: "currency",
    currency: money.currency,
    minimumFractionDigits: whole ? 0 : 2,
    maximumFractionDigits: whole ? 0 : 2,
  })
    .format(money.pence / 100)
    .replace("-", "−");
}
