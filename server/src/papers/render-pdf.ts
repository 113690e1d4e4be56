import type { Words } from "@setfair/words";
import { inThread } from "../threads/in-thread.ts";
import type { Paper } from "./draw-pdf.ts";

/** Draws a paper as a tagged PDF, A4, in the language of `words`, with its page numbers, while others are answered. */
export async function renderPdf(paper: Paper, words: Words): Promise<Buffer> {
  const pdf = await inThread("drawPdf", paper, words.locale);
  return Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength);
}
