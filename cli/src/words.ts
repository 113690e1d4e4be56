import { createWords } from "@setfair/words";

export const WORDS = createWords();
