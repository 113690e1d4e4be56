/** The systems' contract, faults: symptoms, their causes and what to look at next. */
import type { StoreId } from "../stores/stores.ts";

export interface Cause {
  /** text `cause.<id>` */
  readonly id: string;
  /** relative weight before anything is known: common practice, no source */
  readonly weight: number;
  /** weight multiplied by this where the store is in trouble */
  readonly worseWhen?: { readonly store: StoreId; readonly times: number };
  /** id of the symptom, of this system or another, that this cause is itself: once found, the finder goes on there */
  readonly leadsTo?: string;
  /** kinds of other systems that the cause is about; it is left out where one is not fitted */
  readonly mentions?: readonly string[];
  /** nothing that a hirer may do shows or mends it: what is left is to call */
  readonly call?: true;
}

export interface FaultCheck {
  /** text `faultCheck.<id>` */
  readonly id: string;
  readonly causes: readonly string[];
  readonly minutes: number;
  /** 0 nothing can happen, 1 reversible, 2 trained hands only: never proposed to a hirer */
  readonly danger: 0 | 1 | 2;
  /** ids of checks that must come before */
  readonly after: readonly string[];
  readonly mentions: readonly string[];
}

export interface Symptom {
  /** text `symptom.<id>` */
  readonly id: string;
  readonly causes: readonly Cause[];
  readonly checks: readonly FaultCheck[];
  /** stop and call at once */
  readonly dangerous: boolean;
}

export interface SystemFaults<Spec> {
  readonly symptoms: (spec: Spec) => readonly Symptom[];
}
