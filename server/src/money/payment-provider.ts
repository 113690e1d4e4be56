import type { Route } from "@setfair/engine";

/** One movement that somebody, or a provider, is to carry out. The id is ours: the same id again must come to the same. */
export interface Movement {
  readonly id: string;
  readonly hireId: string;
  readonly what: "refund" | "hold" | "charge" | "release";
  readonly pence: number;
  readonly currency: "GBP";
  readonly route: Route;
  /** the entry that it rests on, and the provider's own reference of that */
  readonly of: string | null;
  readonly ofReference: string | null;
}
export type Moved =
  | { readonly ok: true /** null where nobody but a person moved it */; readonly reference: string | null }
  | { readonly ok: false; readonly why: string };

/**
 * Who moves money. Called before the entry is written and outside its transaction; an answer that is not ok
 * writes nothing. A provider must take the same id as the same movement.
 */
export interface PaymentProvider {
  readonly name: string;
  move(movement: Movement): Promise<Moved>;
}

/** Nobody: a person moves the money and records it here by hand. */
export const recordedByHand: PaymentProvider = {
  name: "recordedByHand",
  move: async () => ({ ok: true, reference: null }),
};
