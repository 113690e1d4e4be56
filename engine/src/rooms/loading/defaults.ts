/**
 * What the load check takes where the hire does not say. All are common practice, no source, unless noted;
 * every line that uses one has the basis `default`.
 */
export const LOAD_DEFAULTS = {
  /** conventional mass of a person, kg (a maker's handbook, see `seat-mass-75`) */
  adultKg: 75,
  /** by age in full years, the first that holds; kg */
  childKg: [
    { upToYears: 3, kg: 15 },
    { upToYears: 6, kg: 22 },
    { upToYears: 9, kg: 32 },
    { upToYears: 12, kg: 45 },
    { upToYears: 120, kg: 60 },
  ],
  childOfUnknownAgeKg: 45,
  dogKg: 20,
  /** standard deviations, kg: a mass that somebody declared, and one taken from this table */
  declaredPersonSdKg: 3,
  defaultPersonSdKg: 12,
  dogSdKg: 10,
  /** share of an item's mass where the item gives none */
  itemSdShare: 0.1,
  waterSdLitres: 3,
  fuelSdShare: 0.05,
  weighedSdKg: 10,
  leastWaterLitres: 20,
  waterStepLitres: 10,
  /** luggage and food come off in steps of this, kg */
  itemStepKg: 5,
  /** least share of the load on the steered axle: below it steering and braking suffer */
  leastFrontShare: 0.3,
  /** kg per litre, from memory: EN 590 and EN 228, middle of the range */
  fuelKgPerLitre: { diesel: 0.84, petrol: 0.745, electric: 0, hydrogen: 0 },
  waterKgPerLitre: 1,
} as const;

/** What an act costs the party: the effort of doing it times what it is worth to them, both without unit. Practice. */
export const TROUBLE = {
  /** for each 10 L of water less */
  waterPerTenLitres: 1,
  /** for each cylinder: 2 to take out × 2 */
  cylinder: 4,
  /** to stow a thing elsewhere */
  move: 2,
  /** to leave a thing: effort × worth; `perTenKg` where it comes off by kg */
  leave: {
    luggage: { effort: 1, worth: 4, perTenKg: true },
    food: { effort: 1, worth: 3, perTenKg: true },
    bedding: { effort: 1, worth: 6, perTenKg: false },
    bike: { effort: 1, worth: 6, perTenKg: false },
    bikeRack: { effort: 3, worth: 1, perTenKg: false },
    awning: { effort: 4, worth: 2, perTenKg: false },
    extra: { effort: 1, worth: 4, perTenKg: false },
    other: { effort: 1, worth: 5, perTenKg: false },
  },
} as const;
