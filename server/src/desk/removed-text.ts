import type { Words } from "@setfair/words";
import type { Removed } from "../store/types.ts";

/** "removed on … under …": for whoever looks for a photograph that is gone. */
export const removedText = ({ at, under }: Removed, words: Words): string =>
  words.t("photograph.removed", { on: words.dateText(at.slice(0, 10), "full"), under });
