import { BadInput } from "../../base/bad-input.ts";
import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { gbp, roundPence, sumMoney } from "../../base/money.ts";
import { addDays, daysBetween } from "../../base/years.ts";
import { makeFinding } from "../make-finding.ts";
import { discountFindings, discountPence } from "./discount.ts";
import { nightCharge, seasonOf } from "./night-charge.ts";
import { quoteLine } from "./quote-line.ts";
import type { QuoteHire, QuoteInput, QuoteLine } from "./types.ts";

/**
 * The first price of a hire: nights by season, long-hire steps, every compulsory charge and the chosen extras,
 * whole pence with VAT inside, never dearer than a longer hire from the same day. The result is null where the
 * terms refuse the dates; the findings say why.
 * @throws BadInput on reversed dates, an unknown vehicle class or extra, or terms without a season for a night
 */
export const quoteHire: QuoteHire = (input) => {
  const nights = nightsOf(input);
  const findings = refusals(input, nights);
  if (findings.some(({ severity }) => severity === "refuse")) return { result: null, findings };
  const { terms } = input;
  const isAbroad = input.countries.some((country) => country !== terms.abroad.home);
  const lines = [
    ...nightLines(input, nights),
    ...compulsoryLines(input, isAbroad),
    ...chosenLines(input, nights),
  ];
  const total = sumMoney(
    "GBP",
    lines.map(({ amount }) => amount),
  );
  const bookingDeposit = gbp(roundPence((total.pence * terms.bookingDepositPercent) / 100));
  const { kmPerNight, excessPencePerKm } = terms.allowance;
  const result = {
    termsId: terms.id,
    nights: figure(nights, "nights", "-", { from: input.from, to: input.to }, "computed"),
    lines,
    total,
    vat: sumMoney(
      "GBP",
      lines.map(({ vat }) => vat.amount),
    ),
    bookingDeposit,
    balance: gbp(total.pence - bookingDeposit.pence),
    allowanceKm: figure(kmPerNight * nights, "km", "-", { kmPerNight, nights }, "computed"),
    excessPencePerKm: figure(excessPencePerKm, "pence/km", "-", {}, "declared"),
    securityDeposit: gbp(isAbroad ? terms.security.abroadPence : terms.security.homePence),
    excess: gbp(terms.security.excessPence),
    cancellation: terms.cancellation,
    holdsUntil: holdsUntil(input),
  };
  return { result, findings };
};

/** The terms' days from today, at the latest the day before the hire. */
function holdsUntil({ terms, from, today }: QuoteInput): string {
  const lastChance = [addDays(today, terms.quoteDays), addDays(from.slice(0, 10), -1)].sort()[0]!;
  return [lastChance, today].sort()[1]!;
}

function nightsOf({ from, to }: QuoteInput): number {
  const nights = daysBetween(from.slice(0, 10), to.slice(0, 10));
  if (to <= from) throw new BadInput([{ path: "to", expected: `expected a time after ${from}` }]);
  return nights;
}

function refusals(input: QuoteInput, nights: number): Finding[] {
  const { terms } = input;
  const first = input.from.slice(0, 10);
  const found: Finding[] = [];
  const seasons = Array.from({ length: Math.max(1, nights) }, (_, k) => seasonOf(terms, addDays(first, k)));
  const minimum = Math.max(...seasons.map(({ minimumNights }) => minimumNights));
  const refuse = (code: string, facts: Finding["facts"], mend: string, about = "nights") =>
    found.push(
      makeFinding("money", code, "refuse", "policy", { about, facts, sources: [terms.id], mends: [mend] }),
    );
  if (nights < minimum) refuse("quote.tooShort", { nights, minimum }, "quote.longer");
  if (nights > terms.maximumNights)
    refuse("quote.tooLong", { nights, maximum: terms.maximumNights }, "quote.shorter");
  input.extras.forEach(({ id, count, free }, k) => {
    const stock = free ?? extraOf(terms, id, k).stock;
    if (count > stock) refuse("quote.extraShort", { extra: id, count, free: stock }, "quote.fewerExtras", id);
  });
  found.push(...discountFindings(input, () => nightsPence(input, nights)));
  const { authorisationDays, releaseWorkingDays } = terms.security;
  const held = nights + Math.ceil((releaseWorkingDays * 7) / 5);
  if (held > authorisationDays) {
    const facts = { days: authorisationDays, held };
    found.push(
      makeFinding("money", "money.authorisationLapses", "condition", "policy", {
        facts,
        sources: [terms.id],
        mends: ["money.authoriseAgain"],
      }),
    );
  }
  return found;
}

function nightLines(input: QuoteInput, nights: number): QuoteLine[] {
  const charge = nightCharge(input.terms, input.vehicleClass, input.from.slice(0, 10), nights);
  const line = (code: QuoteLine["code"], about: string, count: number, each: number) =>
    quoteLine(code, about, count, each, count * each, "standard", input.today);
  const lines = charge.seasons.map(({ season, count, eachPence }) =>
    line("nights", season, count, eachPence),
  );
  if (charge.longHirePence !== 0)
    lines.push(line("longHire", String(charge.longHirePercent), 1, -charge.longHirePence));
  if (charge.longerPeriodPence !== 0)
    lines.push(line("longerPeriod", String(charge.longerNights), 1, -charge.longerPeriodPence));
  const { discount } = input;
  if (discount !== undefined)
    lines.push(line("discount", discount.kind, 1, -discountPence(discount, charge.pence)));
  return lines;
}

const nightsPence = ({ terms, vehicleClass, from }: QuoteInput, nights: number): number =>
  nightCharge(terms, vehicleClass, from.slice(0, 10), nights).pence;

function compulsoryLines({ terms, today }: QuoteInput, isAbroad: boolean): QuoteLine[] {
  const always = terms.compulsory.map(({ id, pence, vat }) =>
    quoteLine("compulsory", id, 1, pence, pence, vat, today),
  );
  const { pence, vat } = terms.abroad;
  return isAbroad && pence > 0
    ? [...always, quoteLine("abroad", "abroad", 1, pence, pence, vat, today)]
    : always;
}

/** The k-th extra that was chosen, as the rate card has it. */
function extraOf({ extras }: QuoteInput["terms"], id: string, k: number) {
  const extra = extras.find((each) => each.id === id);
  if (extra !== undefined) return extra;
  const known = extras.map((each) => each.id).join(", ");
  throw new BadInput([{ path: `extras.${k}.id`, expected: `expected one of ${known}` }]);
}

function chosenLines(input: QuoteInput, nights: number): QuoteLine[] {
  const { terms, today } = input;
  const more = Math.max(0, input.drivers - terms.drivers.included);
  const drivers =
    more === 0
      ? []
      : [
          quoteLine(
            "extraDriver",
            "driver",
            more,
            terms.drivers.extraPenceEach,
            more * terms.drivers.extraPenceEach,
            "standard",
            today,
          ),
        ];
  const extras = input.extras.map(({ id, count }, k) => {
    const extra = extraOf(terms, id, k);
    const full = extra.per === "night" ? extra.pence * nights : extra.pence;
    const each = Math.min(full, extra.capPence ?? full);
    return quoteLine("extra", id, count, each, count * each, extra.vat, today);
  });
  return [...drivers, ...extras];
}
