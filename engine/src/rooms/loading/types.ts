import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { type LoadPlace, loadPlanSchema, partySchema } from "../situation.ts";

/** A weighbridge ticket of the vehicle as it stands loaded: each axle on the plate, kg. */
export const weighbridgeTicketSchema = z.strictObject({
  reference: z.string().check(z.minLength(1), z.maxLength(60)),
  weighedAt: z.string().check(z.minLength(10), z.maxLength(40)),
  frontKg: z.number().check(z.minimum(0), z.maximum(5000)),
  rearKg: z.number().check(z.minimum(0), z.maximum(5000)),
});
export type WeighbridgeTicket = z.infer<typeof weighbridgeTicketSchema>;

/** What the load check is asked. Published as the schema of `setfair load`. */
export const loadInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  party: partySchema,
  load: loadPlanSchema,
  /** id of the traveller at the wheel; the foremost adult where left out */
  driverId: z.optional(z.string()),
  /** weighed as loaded: replaces the sum */
  ticket: z.optional(weighbridgeTicketSchema),
  /** least fresh water that the party will drive with, L; 20 where left out (practice) */
  leastWaterLitres: z.optional(z.number().check(z.minimum(0), z.maximum(400))),
});
export type LoadInput = z.infer<typeof loadInputSchema>;

export const LOAD_LINE_KINDS = [
  "runningOrder",
  "option",
  "driver",
  "traveller",
  "dog",
  "fuel",
  "water",
  "cylinder",
  "fitted",
  "item",
] as const;
export type LoadLineKind = (typeof LOAD_LINE_KINDS)[number];

/** One mass and where it rests; front and rear by moments, kg. */
export interface LoadLine {
  readonly id: string;
  readonly kind: LoadLineKind;
  /** declared name of an item or option, or a message id of a fitted part */
  readonly name: string;
  readonly mass: Figure;
  readonly behindFrontAxleM: number | null;
  readonly front: Figure;
  readonly rear: Figure;
  /** standard deviation of the mass, kg */
  readonly sdKg: number;
  readonly removable: boolean;
}

/** A load against its limit, kg. `chanceOver` is a share from 0 to 1, by the normal distribution. */
export interface LoadAgainstLimit {
  readonly load: Figure;
  readonly limit: Figure;
  /** limit − load; negative is over */
  readonly margin: Figure;
  readonly sdKg: number;
  readonly chanceOver: Figure;
}

export type LoadChangeStep =
  | { readonly kind: "leaveItem"; readonly id: string; readonly name: string; readonly byKg: number }
  | {
      readonly kind: "lessWater";
      readonly fromLitres: number;
      readonly toLitres: number;
      readonly byKg: number;
    }
  | { readonly kind: "fewerCylinders"; readonly from: number; readonly to: number; readonly byKg: number }
  | {
      readonly kind: "lessOfItem";
      readonly id: string;
      readonly name: string;
      readonly leftKg: number;
      readonly byKg: number;
    }
  | {
      readonly kind: "moveItem";
      readonly id: string;
      readonly name: string;
      readonly from: LoadPlace;
      readonly to: LoadPlace;
      /** where it then lies */
      readonly behindFrontAxleM: number;
      readonly byKg: number;
    };

/**
 * The least change that makes the load legal. Objective: least trouble to the party, the sum of effort × worth of
 * each act (`defaults.ts`), then least kg taken off. People never stay behind.
 */
export interface LeastChange {
  readonly objective: "leastTrouble";
  /** sum of effort × worth, without unit; 0 where nothing is changed */
  readonly trouble: number;
  readonly outcome: "notNeeded" | "found" | "none";
  readonly steps: readonly LoadChangeStep[];
  /** kg after the change; as loaded where there is none */
  readonly after: { readonly totalKg: number; readonly frontKg: number; readonly rearKg: number };
  /** true where every combination of what can come off was looked at */
  readonly complete: boolean;
}

/** What is stowed in one place, against its label; limit null where none is described. */
export interface PlaceLoad {
  readonly place: LoadPlace;
  readonly load: Figure;
  readonly limit: Figure | null;
}

/** What would be needed where nothing that can come off makes it legal. */
export interface CounterOffer {
  /** kg that this vehicle cannot carry although all that can come off stays behind */
  readonly short: Figure;
  /** payload that one vehicle would need for this party and all its things */
  readonly payloadNeeded: Figure;
  /** vehicles like this one that would carry it between them */
  readonly vehiclesLikeThis: Figure;
}

export interface LoadResult {
  readonly lines: readonly LoadLine[];
  readonly total: LoadAgainstLimit;
  readonly front: LoadAgainstLimit;
  readonly rear: LoadAgainstLimit;
  /** two tyres of the axle against its load; null where no tyre's load index is described */
  readonly tyres: { readonly front: LoadAgainstLimit; readonly rear: LoadAgainstLimit } | null;
  readonly payload: Figure;
  readonly payloadUsed: Figure;
  readonly minimumPayload: Figure;
  /** three masses that are not the same: the licence and most laws ask the plate, the chassis may be built for more, some speed limits ask the unladen mass */
  readonly plated: { readonly mam: Figure; readonly technicalMax: Figure; readonly unladen: Figure | null };
  /** share of the load on the steered axle, 0 to 1 */
  readonly frontShare: Figure;
  readonly places: readonly PlaceLoad[];
  /** null where it is legal, or where a change makes it so */
  readonly counterOffer: CounterOffer | null;
  /** a margin lies within what an unweighed mass in running order may be out */
  readonly needsWeighbridge: boolean;
  readonly legal: boolean;
  readonly leastChange: LeastChange;
}

export type CheckLoad = (input: LoadInput) => RoomAnswer<LoadResult>;
