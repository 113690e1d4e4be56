import type { Figure } from "./figure.ts";

/** Gates in the order in which the tool asks them (see docs/words.md). */
export const GATES = [
  "seats",
  "licence",
  "insurance",
  "masses",
  "diary",
  "dueDates",
  "defects",
  "countries",
  "crossing",
  "season",
  "resources",
  "money",
  "signatures",
] as const;
export type Gate = (typeof GATES)[number];

/** refuse: cannot go · refer: someone else must decide · unchecked: not looked at yet · condition: goes, with this condition · note: worth saying */
export type Severity = "refuse" | "refer" | "unchecked" | "condition" | "note";

/** What the finding rests on decides who may override it: law and safety never, cover only the insurer, policy a named person with a reason. */
export type FindingBasis = "law" | "safety" | "cover" | "policy" | "physics";

/** An expected "no" or "mind this". The text lives in `words` under `finding.<code>`; `facts` are its arguments. */
export interface Finding {
  readonly code: string;
  readonly gate: Gate;
  readonly severity: Severity;
  readonly basis: FindingBasis;
  /** arguments of the message; a Figure where the number is shown */
  readonly facts: Readonly<Record<string, Figure | string | number>>;
  /** ids in the register of sources or dated rules */
  readonly sources: readonly string[];
  /** codes of what would mend it; texts under `mend.<code>` */
  readonly mends: readonly Mend[];
  /** which vehicle, driver, store or item it is about, by id */
  readonly about?: string;
}

export interface Mend {
  readonly code: string;
  readonly facts: Readonly<Record<string, Figure | string | number>>;
}

/** What every room returns. */
export interface RoomAnswer<Result> {
  readonly result: Result;
  readonly findings: readonly Finding[];
}
