import type { DepotDocument, DepotFigures } from "./documents.ts";

/** Until the depot enters its own (common practice, no source). */
export const USUAL_FIGURES: DepotFigures = {
  messageDays: { preHire: 7, dayBefore: 1, returnReminder: 1, statement: 0 },
  linkDays: 14,
  kmADay: 110,
};

/** Days of messages, life of a hirer's link and km a day at this depot; the usual where it entered nothing. */
export const figuresOf = ({ figures }: Pick<DepotDocument, "figures">): DepotFigures => ({
  ...USUAL_FIGURES,
  ...figures,
  messageDays: { ...USUAL_FIGURES.messageDays, ...figures?.messageDays },
});
