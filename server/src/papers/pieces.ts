import type { Finding } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content, TableCell } from "pdfmake/interfaces";

/** Pieces of which the papers are made; text comes from the words, figures with their unit. */
export const heading = (text: string, onNewPage = false): Content => ({
  text,
  style: "heading",
  ...(onNewPage ? { pageBreak: "before" as const } : {}),
});
export const quiet = (text: string): Content => ({ text, style: "quiet" });
export const paragraphs = (text: string): Content[] =>
  text.split("\n\n").map((part) => ({ text: part, margin: [0, 0, 0, 6] }));

/** Layout of every table: a thin line between rows, none between columns. */
export const RULED = "ruled";

/** Names on the left, what they are on the right. */
export const facts = (rows: readonly (readonly [string, string])[]): Content => ({
  layout: RULED,
  table: {
    widths: [150, "*"],
    body: rows.map(([name, value]): TableCell[] => [{ text: name, style: "strong" }, { text: value }]),
  },
});

/** A table with a head; the last column is written to the right where it holds amounts. */
export const table = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
  {
    amounts = false,
    widths,
  }: { readonly amounts?: boolean; readonly widths?: readonly (number | "*" | "auto")[] } = {},
): Content => {
  const cell = (text: string, k: number): TableCell => ({
    text,
    ...(amounts && k === head.length - 1 ? { alignment: "right" as const } : {}),
  });
  return {
    layout: RULED,
    margin: [0, 2, 0, 6],
    table: {
      headerRows: 1,
      dontBreakRows: true,
      widths: [...(widths ?? head.map((_, k) => (k === 0 ? "*" : "auto")))],
      body: [
        head.map((text, k) => ({ ...(cell(text, k) as object), style: "strong" }) as TableCell),
        ...rows.map((row) => row.map(cell)),
      ],
    },
  };
};

/** Findings as a numbered list of plain sentences. */
export const findingList = (findings: readonly Pick<Finding, "code" | "facts">[], words: Words): Content =>
  findings.length === 0
    ? { text: words.t("paper.noConditions") }
    : { ol: findings.map((finding) => words.findingText(finding)) };

/** Lines to sign on. */
export const signLines = (names: readonly string[]): Content => ({
  margin: [0, 26, 0, 0],
  columnGap: 24,
  columns: names.map((name) => ({
    stack: [
      { canvas: [{ type: "line" as const, x1: 0, y1: 0, x2: 220, y2: 0, lineWidth: 0.7 }] },
      { text: name, style: "quiet" },
    ],
  })),
});
