import { GUIDE_CATALOGUE } from "@setfair/words/guide";
import { speak } from "../parts/words.ts";

// imported before anything that draws: the phone brings its own messages only
speak(GUIDE_CATALOGUE);
