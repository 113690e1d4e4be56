import type { Source } from "./source.ts";

/** Sources of the trade's facts: law, codes of conduct, handbooks. One line each, added by whoever cites it. */
export const TRADE_SOURCES = {
  practice: { title: "Common practice of the trade, no source", how: "practice" },
  "from memory": { title: "From memory, unchecked", how: "from memory" },
  "mass-balance": {
    title: "Masses add up; payload is what the plated maximum leaves over the mass in running order",
    how: "practice",
  },
  "gum-2008": {
    title:
      "Guide to the expression of uncertainty in measurement, 4.3.7: known bounds alone give a rectangular distribution",
    number: "JCGM 100",
    year: 2008,
    how: "from memory",
  },
  "normal-tail": {
    title: "Handbook of Mathematical Functions (Abramowitz, Stegun), 7.1.26: error function",
    year: 1964,
    how: "from memory",
  },
  "rental-code-2020": {
    title: "Rental Code of Conduct of the British vehicle rental and leasing trade association",
    year: 2020,
    how: "read",
  },
  "hmrc-vatrec": {
    title: "HMRC internal manual, VAT traders' records: rounding of VAT",
    number: "VATREC12010 to VATREC12030",
    how: "from memory",
  },
  "iso-4217": {
    title: "Codes for the representation of currencies, minor units",
    number: "ISO 4217",
    how: "from memory",
  },
} as const satisfies Record<string, Source>;
