/** What every part of the store speaks of. */

export interface Scope {
  readonly firmId: string;
  readonly depotId: string;
}

/** Any JSON object. Documents are checked by the room that owns them, not by the store. */
export type JsonObject = { readonly [key: string]: unknown };

export interface Page {
  /** at most 200; 50 where left out */
  readonly limit?: number;
  /** opaque, from the answer before */
  readonly after?: string;
}
export interface Paged<T> {
  readonly rows: readonly T[];
  /** give it as `after` for the next page; null at the end */
  readonly next: string | null;
}

/** The document was changed by someone else since it was read. */
export interface StaleVersion {
  readonly ok: false;
  readonly why: "stale";
  /** the version that is there now; 0 where there is none */
  readonly version: number;
}
export interface NotFound {
  readonly ok: false;
  readonly why: "notFound";
}
export interface Saved {
  readonly ok: true;
  readonly version: number;
}
