import type { Page } from "playwright-core";

/**
 * Seconds of each act of the keystroke-level model: S. K. Card, T. P. Moran, A. Newell, "The keystroke-level model
 * for user performance time with interactive systems", Communications of the ACM 23 (7), 1980, pp. 396-410.
 */
export const ACTS = {
  /** a key: average non-secretary typist, 40 words a minute */
  key: 0.28,
  /** a digit, a letter of a number plate: keys in no order of words, the paper's "random letters" */
  randomKey: 0.5,
  /** the hand from one device to another */
  home: 0.4,
  /** making up one's mind before a field or a choice */
  mind: 1.35,
} as const;

/** What was done at the keyboard, counted. */
export interface Count {
  /** Tab, arrows, Enter, Space and letters of words */
  keys: number;
  /** digits and codes */
  randomKeys: number;
  /** fields answered and choices made */
  minds: number;
  /** of these, fields whose answer stands on a plate or a paper */
  answers: number;
}

/** A keyboard that counts. There is no mouse. */
export class CountedKeyboard {
  readonly count: Count = { keys: 0, randomKeys: 0, minds: 0, answers: 0 };
  constructor(private readonly page: Page) {}

  decide(isAnswer = false): void {
    this.count.minds++;
    if (isAnswer) this.count.answers++;
  }

  async press(key: string): Promise<void> {
    this.count.keys++;
    await this.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    for (const each of text) {
      if (/[a-z ]/.test(each)) this.count.keys++;
      else this.count.randomKeys++;
      await this.page.keyboard.type(each);
    }
  }

  /** Tabs on until what has the focus is in `selector`. Throws where it never comes. */
  async tabTo(selector: string, most = 400): Promise<void> {
    for (let k = 0; k <= most; k++) {
      if (await this.page.evaluate((wanted) => document.activeElement?.closest(wanted) != null, selector))
        return;
      await this.press("Tab");
    }
    throw new Error(`no way to ${selector} by the Tab key`);
  }
}

/** The time of what was counted, seconds; one homing of the hands to begin with. */
export const secondsOf = ({ keys, randomKeys, minds }: Count): number =>
  ACTS.home + keys * ACTS.key + randomKeys * ACTS.randomKey + minds * ACTS.mind;
