import { type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "@setfair/records";
import type { Page } from "playwright-core";

interface TabletOf {
  readonly deviceId: string;
  readonly chain: string;
  readonly direction: "out" | "back";
  readonly refs: NewRecord["refs"];
}

/** A tablet that keeps its own chain of records of one walk-round; what it made is still to be sent. */
export function makeTablet({ deviceId, chain, direction, refs }: TabletOf) {
  const made: DepotRecord[] = [];
  return {
    made,
    add(kind: NewRecord["kind"], content: NewRecord["content"]) {
      const last = made.at(-1);
      const after: ChainEnd = last === undefined ? null : { seq: last.seq, hash: last.hash };
      const said = kind === "signature" ? content : { ...content, direction };
      const deviceTime = new Date().toISOString();
      made.push(makeRecord({ deviceId, deviceTime, kind, refs, chain, content: said }, after));
    },
  };
}

/** A JPEG of one shade, 640 × 480 px, drawn by the browser. */
export async function drawPicture(page: Page, shade: string): Promise<Buffer> {
  const bytes = await page.evaluate(async (colour) => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [640, 480];
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("no canvas");
    pen.fillStyle = colour;
    pen.fillRect(0, 0, 640, 480);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg"));
    return [...new Uint8Array(await (blob ?? new Blob()).arrayBuffer())];
  }, shade);
  return Buffer.from(bytes);
}
