import { has, say, t } from "../words.ts";

/** A text of the fault finder; its id where the catalogue does not have it, since a phone may know less than the depot. */
const told = (id: string, otherwise: string): string => {
  if (!has(id)) return otherwise;
  try {
    return say(id);
  } catch {
    // a text that speaks of a thing without a name must not take the page down
    return otherwise;
  }
};
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const symptomText = (id: string): string => told(`symptom.${id}`, id);
export const causeText = (id: string): string => told(`cause.${id}`, id);
export const faultCheckText = (id: string): string => told(`faultCheck.${id}`, id);
export const thingText = (kind: string): string => capital(told(`thing.${kind}`, kind));
/** Other words by which people look for the thing. */
export const alsoText = (kind: string): string => told(`also.${kind}`, "");
export const answerText = (answer: string): string => told(`diagnosis.answer.${answer}`, answer);
export const outcomeText = (outcome: string): string => told(`diagnosis.outcome.${outcome}`, outcome);

/** How long a check takes, in words for somebody on the telephone or beside the van. */
export const aboutMinutes = (minutes: number): string =>
  minutes < 60
    ? t("diagnosis.minutes", { n: Math.round(minutes) })
    : t("diagnosis.hours", { n: Math.round(minutes / 30) / 2 });
