import type { Catalogue } from "./catalogue.ts";
import GERMAN from "./de/messages.json" with { type: "json" };
import { ENGLISH_CATALOGUE } from "./english.ts";
import FRENCH from "./fr/messages.json" with { type: "json" };

/**
 * Messages to hirers in other languages: drafts that no native speaker has checked, to be sent only where a
 * person chose them. Whatever they lack is English.
 */
export const MESSAGE_DRAFTS: Readonly<
  Record<"de" | "fr", { readonly locale: string; readonly catalogue: Catalogue }>
> = {
  de: { locale: "de-DE", catalogue: { ...ENGLISH_CATALOGUE, ...GERMAN } },
  fr: { locale: "fr-FR", catalogue: { ...ENGLISH_CATALOGUE, ...FRENCH } },
};
