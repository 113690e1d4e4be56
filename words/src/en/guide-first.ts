import type { PageCatalogue } from "../catalogue.ts";
import { isFirstWord } from "../first-words.ts";
import { GUIDE } from "./guide.generated.ts";

/** The guide's messages for its first card. The build of the web application writes only these in here. */
export const GUIDE_FIRST: PageCatalogue = Object.fromEntries(
  Object.entries(GUIDE).filter(([id]) => isFirstWord(id)),
);
