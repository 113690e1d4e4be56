/** The systems' contract, spec: what can be fitted, what it weighs and where it shows on a drawing. */
import type * as z from "zod/mini";

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
