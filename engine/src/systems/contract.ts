import type * as z from "zod/mini";
import type { StoreId } from "../stores/stores.ts";

/**
 * The systems' contract. Each `systems/<kind>/` has the same files: spec, physics, briefing, checks,
 * faults, index. A file that does not apply exports `{ notApplicable: 'why' }`.
 * Texts are message ids; the words live in `words/src/en/systems/<kind>.json`.
 */
export interface NotApplicable {
  readonly notApplicable: string;
}

// ── spec ────────────────────────────────────────────────────────────────────────────────────────────

/** What the vehicle editor, the schema and the documents need to know of one field of a spec. */
export type FieldSpec =
  | {
      readonly type: "number";
      readonly unit: string;
      readonly min: number;
      readonly max: number;
      readonly default?: number;
      /** a place behind the front axle, m: the default is that of a van with 5 m behind it and is stretched to the vehicle's own length */
      readonly alongVehicle?: true;
      /** the default is the vehicle's own wheelbase */
      readonly follows?: "wheelbaseM";
      /** what is usual instead where another field of the same system has one of these values; common practice, no source */
      readonly usualBy?: { readonly field: string; readonly values: Readonly<Record<string, number>> };
      /** source id, "practice" (common practice, no source) or "from memory" */
      readonly source: string;
    }
  | {
      readonly type: "choice";
      readonly options: readonly string[];
      readonly default?: string;
      readonly source: string;
    }
  | { readonly type: "flag"; readonly default?: boolean; readonly source: string }
  | { readonly type: "date"; readonly source: string; readonly default?: never };

/** A part that has mass. `inMiro`: already counted in the mass in running order. */
export interface MassItem {
  /** message id of the thing */
  readonly name: string;
  readonly massKg: number;
  readonly behindFrontAxleM: number;
  readonly inMiro: boolean;
  /** can really come off or out before the keys go (awning: no, second cylinder: yes) */
  readonly removable: boolean;
}

/** A place where the system shows on a drawing, in metres: x behind the front axle, y left (nearside) of the centre line, z above ground. */
export interface DrawnPart {
  /** unique within the vehicle, e.g. "awning.cassette" */
  readonly part: string;
  readonly name: string;
  readonly view: View;
  readonly shape: "box" | "circle";
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly lengthM: number;
  readonly heightM: number;
}

export const VIEWS = ["front", "nearside", "rear", "offside", "roof", "inside", "cab", "underside"] as const;
/** In the order of the walk-round. */
export type View = (typeof VIEWS)[number];

export interface SystemSpec<Spec> {
  readonly fields: Readonly<Record<string, FieldSpec>>;
  /** validates one fitted system; built with zod/mini, unknown keys refused */
  readonly schema: z.ZodMiniType<Spec>;
  readonly masses: (spec: Spec) => readonly MassItem[];
  readonly parts: (spec: Spec) => readonly DrawnPart[];
}

// ── physics ─────────────────────────────────────────────────────────────────────────────────────────

/**
 * One way of working, as vectors over the ensemble: for every trip `i`, running this mode at activity 1 for
 * the whole step needs `needs[k][i]` of store `needStores[k]` and gives `gives[k][i]` to `giveStores[k]`,
 * in the store's unit per step. Amounts are never negative. The trip room picks an activity from 0 to 1.
 */
export interface Mode {
  readonly id: string;
  /** at most two needs and one give */
  readonly needStores: readonly StoreId[];
  readonly needs: readonly Float64Array[];
  readonly giveStores: readonly StoreId[];
  readonly gives: readonly Float64Array[];
  /** upper bound of the activity from what the mode itself allows: 0 where it cannot run (engine off, too cold), up to 1 */
  readonly limit: Float64Array;
}

/** What a system sees at the start of a step. Arrays are over the N trips and must not be written to. */
export interface StepView {
  readonly n: number;
  /** length of the step, h */
  readonly dtH: number;
  /** hours since the trip began, at the start of the step */
  readonly hour: number;
  /** local clock time at the middle of the step, 0 to 24 h */
  readonly clockH: number;
  /** civil day of the trip, 0 at departure */
  readonly day: number;
  readonly driving: boolean;
  /** km driven in this step */
  readonly distanceKm: number;
  /** people aboard the vehicle (asleep or awake); a fraction while some are out */
  readonly people: number;
  /** what the pitch offers in this step; 0 without a post */
  readonly postAmperes: number;
  readonly outsideC: Float64Array;
  /** global horizontal irradiance, mean over the step, W/m² */
  readonly irradianceWm2: Float64Array;
  readonly cabinC: Float64Array;
  level(store: StoreId): Float64Array;
  /** level at the start of the step, of a store that has losses of its own */
  startLevel(store: StoreId): Float64Array;
  capacity(store: StoreId): Float64Array;
  /**
   * Fills `share` with the part, 0 to 1, of `need` (wanted evenly over the step) that takes the store down to `floor`,
   * a share of its capacity, and no further, with what is lost by drawing it so fast and what others have drawn of it.
   */
  shareDown(store: StoreId, need: Float64Array, floor: number, share: Float64Array): void;
  /** fills `out` with the cabin's temperature in the middle of the step where nothing is heated, °C */
  cabinMiddleC(out: Float64Array): void;
  /** fills `out` with the heat, Wh, that this step must give for the cabin to be at `setC[i]` at its end; never negative */
  heatToReach(setC: Float64Array, out: Float64Array): void;
  /** likewise the heat that keeps a cabin which is at `setC[i]` there over the step */
  heatToHold(setC: Float64Array, out: Float64Array): void;
  /** value drawn per trip and day for a purpose: standard normal, same for the whole day */
  dayNormal(purpose: string): Float64Array;
  /** value drawn once per trip (appliance spread): standard normal */
  tripNormal(purpose: string): Float64Array;
}

/** One system at work through one forecast. */
export interface Running {
  readonly modes: readonly Mode[];
  /** activity wanted in this step, 0 to 1, for each trip; shared out over the modes in their order; the settlement leaves in it what could not be met */
  readonly demand: Float64Array;
  /**
   * Makes a supply only as far as somebody takes it (an inverter): what is left of the supply at the end of the
   * step goes back to where it came from. Its one mode has one need and gives to a supply.
   */
  readonly onDemand?: boolean;
  /** with `onDemand`, once all before it have settled: fills its mode's `limit` for what is `wanted` of its supply in this step */
  hold?(view: StepView, wanted: Float64Array): void;
  /** left out where it may be wanted at any time; else it is asked only in steps on the road, or with a post that gives something */
  readonly only?: "driving" | "atPost";
  /** charges with what is left once everybody else has settled, and what was made on demand is back */
  readonly afterAll?: boolean;
  /** what goes without when its demand is not met, where no store would tell of it (a meal that an electric hob cannot cook): id of the finding `trip.without.<…>` */
  readonly goesWithout?: string;
  /**
   * Fills `demand`, which is its own, and every mode's `needs`, `gives` and `limit` for the step, the whole ensemble in
   * one call. False where nothing is wanted in this step in any life: nothing need be filled then.
   */
  prepare(view: StepView, demand: Float64Array): boolean;
}

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

/** What stands in for a load on 230 V that has to be off: another source, or nothing and it has to wait. */
export type MainsInstead = "gas" | "fuel" | "battery" | "waits";

/** One thing of a system that draws on the 230 V of a post. */
export interface MainsLoad {
  /** power of its stages, W, rising; the last is what it draws when nobody turns it down */
  readonly stagesW: readonly number[];
  /** runs for hours or only for minutes (a hob) */
  readonly lasts: "hours" | "minutes";
  readonly instead: MainsInstead;
  /** when it is wanted: `always`, or only while nights are cold or days are hot */
  readonly wanted: "always" | "cold" | "hot";
  /** current of the first moment where a motor starts, A */
  readonly startA?: number;
  /** kinds of systems whose own load is the same element as this one; they come before it in a step, and it has what they leave of the stage */
  readonly sameAs?: readonly string[];
}

/** The way in of 230 V: what it can carry, and what is lost in its lead. */
export interface MainsInlet {
  readonly maxA: number;
  readonly leadLengthM: number;
  readonly leadAreaMm2: number;
  readonly isOnDrum: boolean;
  /** voltage lost in the lead at a current in A, V */
  readonly dropV: (amperes: number) => number;
  /** most power at the inlet, W, at a post of so many A */
  readonly powerW: (postAmperes: number) => number;
}

/** What a system does on the 230 V of a post, set as the hire says. */
export interface MainsUse {
  readonly loads: readonly MainsLoad[];
  readonly inlet?: MainsInlet;
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

// ── briefing ────────────────────────────────────────────────────────────────────────────────────────

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

// ── checks ──────────────────────────────────────────────────────────────────────────────────────────

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

// ── faults ──────────────────────────────────────────────────────────────────────────────────────────

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

// ── the module ──────────────────────────────────────────────────────────────────────────────────────

export interface SystemModule<Kind extends string, Spec> {
  readonly kind: Kind;
  readonly spec: SystemSpec<Spec>;
  readonly physics: SystemPhysics<Spec> | NotApplicable;
  readonly briefing: SystemBriefing<Spec> | NotApplicable;
  readonly checks: SystemChecks<Spec> | NotApplicable;
  readonly faults: SystemFaults<Spec> | NotApplicable;
}

/** Keeps the kind's literal type and the spec's type together. */
export function defineSystem<const Kind extends string, Spec>(
  module: SystemModule<Kind, Spec>,
): SystemModule<Kind, Spec> {
  return module;
}

export function applies<T extends object>(part: T | NotApplicable): part is T {
  return !("notApplicable" in part);
}
