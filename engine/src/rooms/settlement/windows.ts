import type { Terms } from "../quote/types.ts";

export interface Windows {
  /** hours after the keys in which the hirer may add what both missed */
  readonly additionsHours: number;
  /** hours after the return was signed in which the depot looks again at what could not be judged */
  readonly secondLookHours: number;
}

/** Where the terms state none: common practice, no source. */
const USUAL: Windows = { additionsHours: 24, secondLookHours: 48 };

/** The windows that the hirer signs for, hours. */
export const windowsOf = (terms: Pick<Terms, "windows"> | null): Windows => terms?.windows ?? USUAL;
