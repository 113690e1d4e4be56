import { ENGLISH_CATALOGUE } from "@setfair/words";
import { speak } from "./words.ts";

// imported before anything that draws: desk and yard speak every message
speak(ENGLISH_CATALOGUE);
