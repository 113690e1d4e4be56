/** The systems' contract, checks: what is looked at, read or counted on the walk-round. */
import type { View } from "./contract-spec.ts";

export type CheckWhen = "out" | "back" | "turnaround" | "due";

export interface Check {
  /** unique, `<kind>.<check>`; text `check.<id>` */
  readonly id: string;
  readonly when: readonly CheckWhen[];
  readonly view: View;
  /** part on the drawing, where there is one */
  readonly part?: string;
  readonly kind: "look" | "reading" | "count";
  readonly photograph: boolean;
  readonly reading?: {
    readonly unit: string;
    readonly min: number;
    readonly max: number;
    /** differences within this are measuring error */
    readonly tolerance: number;
    readonly step: number;
    readonly source: string;
  };
  /** expected number for a count */
  readonly expected?: number;
  /** used up in normal use: brought back to `expected` at the turnaround, never charged */
  readonly consumable?: true;
  /** tariff or repair line in the terms when it comes back short or marked */
  readonly charge?: string;
}

export interface SystemChecks<Spec> {
  readonly checks: (spec: Spec) => readonly Check[];
}
