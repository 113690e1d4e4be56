import type { Terms } from "./types.ts";

/** Invented terms for the tests beside the rooms. */
export function testTerms(change: Partial<Terms> = {}): Terms {
  return {
    id: "terms-test",
    validFrom: "2026-01-01",
    currency: "GBP",
    seasons: [
      {
        id: "high",
        spans: [{ from: "07-01", to: "08-31" }],
        nightPence: { panelVan: 15000 },
        minimumNights: 7,
      },
      {
        id: "low",
        spans: [{ from: "11-01", to: "03-15" }],
        nightPence: { panelVan: 7500 },
        minimumNights: 2,
      },
      {
        id: "mid",
        spans: [{ from: "01-01", to: "12-31" }],
        nightPence: { panelVan: 10500 },
        minimumNights: 3,
      },
    ],
    maximumNights: 60,
    longHire: [
      { fromNights: 7, reductionPercent: 5 },
      { fromNights: 14, reductionPercent: 10 },
    ],
    allowance: { kmPerNight: 240, excessPencePerKm: 19, gracePercent: 1 },
    drivers: { included: 1, extraPenceEach: 2500 },
    compulsory: [{ id: "gasAndPreparation", pence: 4500, vat: "standard" }],
    abroad: { home: "GB", pence: 9500, vat: "exempt" },
    extras: [
      { id: "bedding", pence: 3000, per: "hire", stock: 10, vat: "standard" },
      { id: "bikeRack", pence: 500, per: "night", capPence: 4000, stock: 2, vat: "standard" },
    ],
    bookingDepositPercent: 15,
    security: {
      homePence: 100000,
      abroadPence: 150000,
      excessPence: 150000,
      authorisationDays: 28,
      releaseWorkingDays: 5,
    },
    cancellation: [{ atLeastDaysBefore: 30, keepPercent: 15 }],
    quoteDays: 7,
    tariff: {
      fuelPencePerLitre: { diesel: 150 },
      fuelServicePence: 1000,
      defPencePerLitre: 150,
      lpgPencePerKg: 250,
      cleaningPencePerHour: 3000,
      wasteNotEmptiedPence: 3000,
      cassetteNotEmptiedPence: 4000,
      latePencePerHour: 2500,
      lateGraceMinutes: 30,
      kit: { "hookUp.leads": { newPence: 6000, lifeYears: 5, leastShare: 0.1 } },
      damage: [
        {
          of: "damage",
          kind: "scratch",
          upToMm: 100,
          pence: 9000,
          part: "repair",
          lifeYears: 10,
          leastShare: 0.2,
        },
        { of: "damage", kind: "scratch", pence: 24000, part: "repair", lifeYears: 10, leastShare: 0.2 },
        { of: "awning", kind: "tear", pence: 60000, part: "replace", lifeYears: 8, leastShare: 0.1 },
      ],
    },
    ...change,
  };
}
