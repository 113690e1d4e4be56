import * as z from "zod/mini";
import type { RoomAnswer } from "../../base/finding.ts";
import type { IsoLocal } from "../../base/time.ts";
import { isoDateSchema, isoLocalSchema } from "../situation.ts";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const whole = (min: number, max: number) => z.int().check(z.minimum(min), z.maximum(max));

/** What travels with a hire and comes back; the depot may add kinds of its own. */
export const STOCK_KINDS = [
  "childRestraint",
  "bikeRack",
  "snowChains",
  "bedding",
  "cot",
  "europeKit",
  "firstAidKit",
  "tollTag",
  "gasAdaptor",
  "onHireCertificate",
  "outdoorChairs",
] as const;

/** One numbered thing (count 1), or a lot of like things that are counted. */
export const stockItemSchema = z.strictObject({
  id: text(80),
  /** a kind above, or the id of an extra in the terms */
  kind: text(40),
  /** its number or name on the shelf */
  name: text(80),
  /** what sets it apart from others of its kind: group of a child seat, tyre size of chains, vehicle of a certificate */
  size: z.optional(text(40)),
  count: whole(1, 1000),
  /** last day on which it may be used */
  expiresOn: z.optional(isoDateSchema),
  /** from this day on it is not used any more */
  retiredOn: z.optional(isoDateSchema),
});
export type StockItem = z.infer<typeof stockItemSchema>;

/** So many of an item with a hire, half open; the turnaround of stock comes after it. */
export const stockHoldSchema = z.strictObject({
  itemId: text(80),
  hireId: text(80),
  count: whole(1, 1000),
  from: isoLocalSchema,
  to: isoLocalSchema,
  /** put aboard: stays the very thing that it is */
  packed: z.boolean(),
});
export type StockHold = z.infer<typeof stockHoldSchema>;

export const stockAskSchema = z.strictObject({
  kind: text(40),
  /** any size where left out */
  size: z.optional(text(40)),
  count: whole(1, 1000),
});
export type StockAsk = z.infer<typeof stockAskSchema>;

export const stockInputSchema = z.strictObject({
  items: z.array(stockItemSchema),
  holds: z.array(stockHoldSchema),
  asks: z.array(stockAskSchema),
  from: isoLocalSchema,
  to: isoLocalSchema,
  /** to look it over and put it back on the shelf */
  turnaroundMinutes: whole(0, 10_080),
  timeZone: z.string(),
  /** what this hire holds does not stand in its way */
  hireId: z.optional(z.string()),
});
export type StockInput = z.infer<typeof stockInputSchema>;

export interface StockSeat {
  readonly itemId: string;
  readonly count: number;
}
/** Of what there is not enough, who has the rest, and when it would do. */
export interface StockShort {
  readonly kind: string;
  readonly size: string | null;
  readonly wanted: number;
  /** how many the depot has that are good through the hire */
  readonly have: number;
  readonly free: number;
  readonly holders: readonly {
    readonly hireId: string;
    readonly count: number;
    readonly from: IsoLocal;
    readonly to: IsoLocal;
  }[];
  /** when the first of them is back and looked over; null where nobody has one */
  readonly backAt: IsoLocal | null;
  /** the nearest later start at which a hire of this length finds enough; null where it never does */
  readonly fitsFrom: IsoLocal | null;
}
export interface StockResult {
  /** what serves each ask, in the order of the asks; empty for one that is short */
  readonly seats: readonly (readonly StockSeat[])[];
  /** things promised to other hires, not yet packed, that another like thing serves as well */
  readonly moves: readonly {
    readonly hireId: string;
    readonly from: string;
    readonly to: string;
    readonly count: number;
  }[];
  readonly short: readonly StockShort[];
}
export type AssignStock = (input: StockInput) => RoomAnswer<StockResult>;
