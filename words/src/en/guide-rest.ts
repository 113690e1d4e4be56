import type { PageCatalogue } from "../catalogue.ts";
import { isFirstWord } from "../first-words.ts";
import { GUIDE } from "./guide.generated.ts";

/** All other messages of the guide. The build of the web application writes only these in here. */
export const GUIDE_REST: PageCatalogue = Object.fromEntries(
  Object.entries(GUIDE).filter(([id]) => !isFirstWord(id)),
);
