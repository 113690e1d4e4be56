import { figure } from "../../base/figure.ts";
import { roundPence } from "../../base/money.ts";
import { type InputDifference, notCharged, priceOfTerms, settlementLine } from "./settlement-line.ts";
import type { SettlementInput, SettlementLine } from "./types.ts";

type Reading = Extract<InputDifference, { kind: "reading" }>;
type Metered = (reading: Reading, input: SettlementInput) => SettlementLine[];

/** Distance, fuel, gas and DEF: like for like, by the difference of two readings. Nothing is paid for more than went out. */
export function meteredLines(reading: Reading, input: SettlementInput): SettlementLine[] {
  const decided = input.classes[reading.id];
  if (decided !== undefined && decided !== "hirer") return [notCharged(reading, decided)];
  const metered = reading.charge === null ? undefined : METERED[reading.charge];
  return metered === undefined ? [notCharged(reading, "noTariff")] : metered(reading, input);
}

const mileage: Metered = (reading, { terms, hire }) => {
  const { excessPencePerKm, gracePercent } = terms.allowance;
  const allowedKm = hire.allowanceKm * (1 + gracePercent / 100);
  const overKm = Math.max(0, reading.change.value - allowedKm);
  const inputs = { drivenKm: reading.change.value, allowanceKm: hire.allowanceKm, gracePercent };
  const quantity = figure(overKm, "km", "-", inputs, "measured");
  const pence = roundPence(overKm * excessPencePerKm);
  const because = pence === 0 ? ("withinAllowance" as const) : null;
  return [
    settlementLine({
      id: reading.id,
      code: "mileage",
      about: reading.charge ?? "",
      pence,
      quantity,
      because,
      from: reading,
      working: [priceOfTerms(terms, excessPencePerKm, "pence/km")],
    }),
  ];
};

/** Both readings as they stood, with the unit they were read in: a gauge in shares, a range in km, not in litres. */
const readingsOf = ({ out, back }: Reading) => ({ out: out.value, back: back.value, readIn: out.unit });

const fuel: Metered = (reading, { terms, hire }) => {
  const price = terms.tariff.fuelPencePerLitre[hire.fuel];
  const litres = litresShort(reading, hire.fuelTankLitres);
  if (price === undefined || litres === null) return [notCharged(reading, "noTariff")];
  if (litres === 0) return [notCharged(reading, "withinAllowance")];
  const quantity = figure(
    litres,
    "L",
    "-",
    { ...readingsOf(reading), tankLitres: hire.fuelTankLitres ?? null },
    "measured",
  );
  const line = settlementLine({
    id: reading.id,
    code: "fuel",
    about: hire.fuel,
    pence: roundPence(litres * price),
    quantity,
    from: reading,
    working: [priceOfTerms(terms, price, "pence/L")],
  });
  const service = terms.tariff.fuelServicePence;
  return service === 0
    ? [line]
    : [
        line,
        settlementLine({
          id: `${reading.id}:service`,
          code: "fuelService",
          about: hire.fuel,
          pence: service,
          from: reading,
          working: [priceOfTerms(terms, service, "pence", { of: "once" })],
        }),
      ];
};

const def: Metered = (reading, { terms, hire }) => {
  const perKm = hire.defLitresPer1000Km;
  const litres =
    reading.out.unit === "km" && perKm !== undefined
      ? Math.max(0, (-reading.change.value * perKm) / 1000)
      : litresShort(reading, undefined);
  return perUnit("def", reading, litres, "L", terms.tariff.defPencePerLitre, terms);
};

const lpg: Metered = (reading, { terms }) =>
  perUnit(
    "lpg",
    reading,
    reading.out.unit === "kg" ? Math.max(0, -reading.change.value) : null,
    "kg",
    terms.tariff.lpgPencePerKg,
    terms,
  );

const METERED: Readonly<Record<string, Metered>> = { mileage, fuel, def, lpg };

function perUnit(
  code: "def" | "lpg",
  reading: Reading,
  short: number | null,
  unit: string,
  price: number,
  terms: SettlementInput["terms"],
): SettlementLine[] {
  if (short === null || price === 0) return [notCharged(reading, "noTariff")];
  if (short === 0) return [notCharged(reading, "withinAllowance")];
  const quantity = figure(short, unit, "-", readingsOf(reading), "measured");
  return [
    settlementLine({
      id: reading.id,
      code,
      about: code,
      pence: roundPence(short * price),
      quantity,
      from: reading,
      working: [priceOfTerms(terms, price, `pence/${unit}`)],
    }),
  ];
}

/** Litres short of the out reading; a share needs the tank; null where the unit cannot be turned into litres. */
function litresShort(reading: Reading, tankLitres: number | undefined): number | null {
  const short = Math.max(0, -reading.change.value);
  if (reading.out.unit === "L") return short;
  return reading.out.unit === "share" && tankLitres !== undefined ? short * tankLitres : null;
}
