import type { Readable } from "node:stream";
import type { Scope } from "../store/types.ts";

/** The original as the device made it, or a smaller picture made here, by its longest side in pixels, without any of the original's metadata. */
export type PhotographSize = "original" | "1600" | "320";

export interface PhotographPut {
  readonly scope: Scope;
  /** SHA-256 of the whole JPEG in hex: its only name */
  readonly sha256: string;
  /** first byte of this part; 0 begins anew */
  readonly from: number;
  /** bytes of the whole photograph */
  readonly total: number;
  readonly body: AsyncIterable<Uint8Array>;
}

export type PhotographAnswer =
  /** all of it is here under its hash; `again` when it was before */
  | {
      readonly state: "kept";
      readonly again: boolean;
      readonly bytes: number;
      readonly widthPx: number;
      readonly heightPx: number;
    }
  /** send on from `received` */
  | { readonly state: "partial"; readonly received: number }
  | {
      readonly state: "refused";
      readonly why: "badHash" | "badRange" | "tooLarge" | "notJpeg" | "hashDiffers";
      /** bytes that are here and stay, 0 where the part was thrown away */
      readonly received: number;
      /** the most bytes that are taken */
      readonly maxBytes: number;
    };

/** Keeps photographs. A photograph is there whole under its hash or not at all. */
export interface PhotographFiles {
  readonly maxBytes: number;
  /** Resumable and idempotent. What came of a part that broke off stays and may be sent on. */
  put(part: PhotographPut): Promise<PhotographAnswer>;
  /** Bytes that are here: of the whole, or of the part that came so far. */
  status(
    scope: Scope,
    sha256: string,
  ): Promise<{ readonly state: "kept" | "partial" | "absent"; readonly received: number }>;
  /** Null where it is not here. A smaller picture is made on first use and kept. */
  open(
    scope: Scope,
    sha256: string,
    size: PhotographSize,
  ): Promise<{ readonly stream: Readable; readonly bytes: number; readonly type: "image/jpeg" } | null>;
  /** Removes the original and everything made of it. */
  remove(scope: Scope, sha256: string): Promise<boolean>;
  /** Every original that is here, of every depot. */
  each(): AsyncIterable<{ readonly scope: Scope; readonly sha256: string }>;
}
