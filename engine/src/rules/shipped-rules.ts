import { COUNTRY_RULES } from "./country-rules.ts";
import changes from "./data/changes.json" with { type: "json" };
import due from "./data/due.json" with { type: "json" };
import licence from "./data/licence.json" with { type: "json" };
import mass from "./data/mass.json" with { type: "json" };
import season from "./data/season.json" with { type: "json" };
import seats from "./data/seats.json" with { type: "json" };
import settlement from "./data/settlement.json" with { type: "json" };
import vat from "./data/vat.json" with { type: "json" };
import type { Rule } from "./rule.ts";

/** Every dated rule that ships, also those switched off; a test holds each to the schema. */
export const RULES: readonly Rule[] = [
  ...licence,
  ...mass,
  ...seats,
  ...season,
  ...vat,
  ...due,
  ...settlement,
  ...changes,
  ...COUNTRY_RULES,
] as Rule[];
