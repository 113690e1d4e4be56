import { has, say, t } from "../../parts/words.ts";

/** Nearside and offside in a hirer's words. */
const hirerSides = (text: string): string =>
  text.replace(/nearside/gi, t("hirer.missed.nearside")).replace(/offside/gi, t("hirer.missed.offside"));

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A part of the vehicle in a hirer's words, by its message id; its id where there are none yet. */
export const partWords = (messageId: string): string =>
  hirerSides(has(messageId) ? say(messageId) : messageId.replace(/^part\./, ""));

/** What a line of the settlement is about: a part, a check or a thing. */
export function aboutWords(about: string): string {
  // a mark on a whole side is named by the side
  const side = `hirer.missed.view.${about.replace(/^(body|view)\./, "")}`;
  const id = [`part.${about}`, `check.${about}`, `thing.${about}`, side].find(has);
  return id === undefined ? about : capital(hirerSides(say(id)));
}
