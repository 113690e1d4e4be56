/** The systems' contract, physics: what a system contributes to the stores, how its store behaves, and what it starts in a forecast. */
import type { StoreId } from "../stores/stores.ts";
import type { MainsUse } from "./contract-mains.ts";
import type { Running, StepView } from "./contract-step.ts";

/** What a system contributes to the stores themselves. */
export interface StoreShare {
  readonly store: StoreId;
  readonly capacity: number;
  /** fraction full at departure when the hire does not say otherwise */
  readonly initial: number;
}

/** How the hirer is told to set the system, chosen by the hire; keys are the system's own. */
export type Setting = Readonly<Record<string, number | string | boolean>>;

/** What the 230 V of a post leaves to one system. A stage is on or off; nobody turns it in between. */
export interface PostShare {
  /**
   * Highest stage, W, that fits at a post of so many A beside all that comes first; 0 where none does. `isCold`: what
   * is wanted only in the cold counts too. Infinite where the system draws nothing from a post.
   */
  stageW(postAmperes: number, isCold: boolean): number;
}

export interface PhysicsContext {
  readonly n: number;
  /** length of every step, h */
  readonly dtH: number;
  /** people who live aboard */
  readonly people: number;
  readonly setting: Setting;
  /** left out where nobody sized the post: every stage fits */
  readonly post?: PostShare;
  /**
   * Of an appliance whose one set of electric elements serves two systems: what the one that prepares first takes of
   * its energy in this step, Wh by life. That one fills it in every step, the other has the rest.
   */
  readonly elementWh?: Float64Array;
  /** specific to the vehicle, not to one system */
  readonly vehicle: { readonly floorAreaM2: number; readonly consumptionLPer100Km?: number };
}

/**
 * How a store behaves as a store (charge acceptance, losses, draw-off in the cold), said by the system that
 * holds it. Arrays are over the N trips, in the store's unit per step.
 */
export interface Keeping {
  readonly store: StoreId;
  /** start of the step: the most that may be drawn, beyond what the level allows; false where that is all there is in every life: nothing need be filled then */
  limitOut?(view: StepView, mostOut: Float64Array): boolean;
  /** likewise the most that may be taken in, beyond what the capacity allows */
  limitIn?(view: StepView, mostIn: Float64Array): void;
  /** end of the step: the store's own loss, given the net of what came in (negative: went out); a negative loss is a gain */
  lose?(view: StepView, netIn: Float64Array, loss: Float64Array): void;
  /** as {@link StepView.shareDown}, where what is drawn costs more than itself; without it nothing more is lost */
  shareDown?(view: StepView, need: Float64Array, floor: number, share: Float64Array): void;
}

/** A level as read on the panel, in the store's unit. */
export interface ReadLevel {
  readonly level: number;
  readonly sd: number;
}

/** What a kilometre of road takes from a store, in the middle of habits, and what is kept back when a range is told. */
export interface RoadUse {
  readonly store: StoreId;
  /** in the store's unit */
  readonly perKm: number;
  /** of the capacity, 0 to 1 */
  readonly reserveShare: number;
}

export interface SystemPhysics<Spec> {
  /** left out where driving takes nothing from it; null where this vehicle's use is not known */
  readonly road?: (spec: Spec, vehicle: PhysicsContext["vehicle"]) => RoadUse | null;
  /** left out where it has nothing to do with 230 V from outside */
  readonly mains?: (spec: Spec, setting: Setting) => MainsUse;
  readonly stores: (spec: Spec) => readonly StoreShare[];
  /** none when the system only holds a store; several where parts of it run independently (heater and its stand-by) */
  readonly start?: (spec: Spec, context: PhysicsContext) => readonly Running[];
  readonly keep?: (spec: Spec, context: PhysicsContext) => Keeping;
  /** what a reading of this system's store means; null where the unit says nothing here (volts of a lithium battery) */
  readonly read?: (spec: Spec, value: number, unit: string, sd: number | null) => ReadLevel | null;
}
