/** The systems' contract, briefing: the cards of one system. */

export const MOMENTS = [
  "beforeDriving",
  "onArriving",
  "living",
  "night",
  "leavingPitch",
  "filling",
  "returning",
  "danger",
] as const;
export type Moment = (typeof MOMENTS)[number];

export interface BriefingSituation {
  readonly country: string;
  readonly nightsOffHookUp: number;
  readonly coldestNightC: number;
  readonly firstTime: boolean;
  readonly people: number;
  readonly children: number;
  /** dogs that travel; left out where nobody asked, and then what is said of them is said */
  readonly dogs?: number | undefined;
}

export interface BriefingCard {
  /** unique, `<kind>.<card>`; texts: `card.<id>.title`, `card.<id>.do`, optional `card.<id>.caution`, `card.<id>.ask`, `card.<id>.answer` */
  readonly id: string;
  readonly moment: Moment;
  /** kinds of other systems that the text mentions through `{thing_<kind>}` tokens; the card is dropped where one is not fitted */
  readonly mentions: readonly string[];
  /** chance per hire that it goes wrong untold, 0 to 1, and what it then costs in pence: common practice, no source unless stated */
  readonly chance: number;
  readonly costPence: number;
  readonly minutes: number;
  /** compulsory: cannot be left to reading (gas, mains, carbon monoxide, fire, belts, height) */
  readonly must: boolean;
  /** the hirer does it with their own hands */
  readonly handsOn: boolean;
  readonly hasCaution: boolean;
  readonly hasQuestion: boolean;
  /** figures for the text, e.g. usable Ah */
  readonly facts: Readonly<Record<string, number | string>>;
}

export interface SystemBriefing<Spec> {
  readonly cards: (spec: Spec, situation: BriefingSituation) => readonly BriefingCard[];
}
