import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { facts, quiet } from "../pieces.ts";
import { clocksText, purposeText } from "./evidence-words.ts";
import type { KeptRecord } from "./kept-records.ts";

interface Signed {
  readonly signer: { readonly name: string };
  readonly role: string;
  readonly purpose: string;
  readonly records: readonly unknown[];
  readonly shown: { readonly text: string };
  /** signed with a pen, keyed in later; then there are no strokes */
  readonly onPaper?: { readonly sha256: string; readonly at: string };
  readonly strokes: readonly (readonly { readonly x: number; readonly y: number }[])[];
}

/** A signature as it was drawn, by whom, for what, when by both clocks, and how many records it covers. */
export function signatureBlock(kept: KeptRecord, words: Words, withText = false): Content[] {
  const signed = kept.content as unknown as Signed; // checked when it was taken
  return [
    {
      unbreakable: true,
      margin: [0, 6, 0, 8],
      stack: [
        facts([
          [
            words.t("proof.signedBy"),
            `${signed.signer.name} (${words.t("proof.role", { role: signed.role })})`,
          ],
          [words.t("proof.signedFor"), purposeText(signed.purpose, words)],
          [words.t("proof.when"), clocksText(kept, words)],
          [words.t("proof.covers"), words.t("proof.coversRecords", { n: signed.records.length })],
        ]),
        signed.onPaper === undefined
          ? { svg: drawn(signed.strokes), fit: [220, 70], margin: [0, 4, 0, 2] }
          : quiet(words.t("proof.onPaper", { at: words.dateText(signed.onPaper.at, "fullTime") })),
        hashLine(words.t("proof.recordHash"), kept.record.hash),
      ],
    },
    ...(withText ? [quiet(words.t("proof.shownText")), ...linesOf(signed.shown.text)] : []),
  ];
}

const linesOf = (text: string): Content[] =>
  text.split("\n").map((line) => ({ text: line === "" ? " " : line, fontSize: 9 }));

/** A hash in full; a copy of it on paper proves that nothing was changed since. */
export const hashLine = (name: string, hash: string): Content => ({
  text: [`${name}: `, { text: hash, characterSpacing: 0.2 }],
  style: "quiet",
  fontSize: 8,
});

/** The strokes as a drawing of its own size. */
function drawn(strokes: Signed["strokes"]): string {
  const points = strokes.flat();
  const [right, bottom] = [Math.max(...points.map(({ x }) => x)), Math.max(...points.map(({ y }) => y))];
  const [left, top] = [Math.min(...points.map(({ x }) => x)), Math.min(...points.map(({ y }) => y))];
  const box = [left - 4, top - 4, Math.max(20, right - left + 8), Math.max(20, bottom - top + 8)];
  const lines = strokes.map(
    (stroke) =>
      `<polyline fill="none" stroke="#0f3440" stroke-width="2" points="${stroke.map(({ x, y }) => `${x},${y}`).join(" ")}"/>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.join(" ")}">${lines.join("")}</svg>`;
}
