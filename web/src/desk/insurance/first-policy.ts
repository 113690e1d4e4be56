import type { Policy } from "./policy-form.tsx";

/**
 * Where a firm has no criteria yet: so strict that everybody is put to the insurer until the limits of the firm's own
 * policy stand here. No limit of an insurer is guessed.
 */
export function firstPolicy(today: string, home: string): Policy {
  const lastDay = new Date(Date.parse(`${today}T00:00:00Z`) + 364 * 86_400_000).toISOString().slice(0, 10);
  return {
    id: "",
    validFrom: today,
    validTo: lastDay,
    age: { min: 99, max: 99, outcome: "refer" },
    yearsHeld: { min: 20, outcome: "refer" },
    convictions: { withinYears: 11, maxCount: 0, maxPointsEach: 0, maxPointsTotal: 0, outcome: "refer" },
    codes: [],
    faultIncidents3y: { max: 0, outcome: "refer" },
    disqualified3y: "refuse",
    maxMamKg: 1000,
    countries: [home],
    maxNightsAbroad: 0,
  };
}
