const LONGEST_RULE = 60;

interface TableLook {
  /** columns that stand to the right */
  readonly right?: readonly number[];
  /** most letters of a column; longer texts go on in the next line */
  readonly most?: Readonly<Record<number, number>>;
}

/** Columns side by side, the head underlined. */
export function writeTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  { right = [], most = {} }: TableLook = {},
): string {
  const lines = rows.flatMap((row) => linesOf(row, most));
  const widths = head.map((title, k) => Math.max(title.length, ...lines.map((row) => (row[k] ?? "").length)));
  const line = (cells: readonly string[]) =>
    widths
      .map((width, k) =>
        right.includes(k) ? (cells[k] ?? "").padStart(width) : (cells[k] ?? "").padEnd(width),
      )
      .join("  ")
      .trimEnd();
  return [
    line(head),
    line(widths.map((width) => "─".repeat(Math.min(width, LONGEST_RULE)))),
    ...lines.map(line),
  ].join("\n");
}

/** One row over as many lines as its longest cell needs. */
function linesOf(row: readonly string[], most: NonNullable<TableLook["most"]>): string[][] {
  const cells = row.map((cell, k) => wrap(cell, most[k] ?? Number.POSITIVE_INFINITY));
  const count = Math.max(...cells.map(({ length }) => length));
  return Array.from({ length: count }, (_, k) => cells.map((parts) => parts[k] ?? ""));
}

function wrap(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
