const LONGEST_RULE = 60;

/** Columns side by side, the head underlined; columns named in `right` stand to the right. */
export function writeTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const widths = head.map((title, k) => Math.max(title.length, ...rows.map((row) => (row[k] ?? "").length)));
  const line = (cells: readonly string[]) =>
    widths
      .map((width, k) =>
        right.includes(k) ? (cells[k] ?? "").padStart(width) : (cells[k] ?? "").padEnd(width),
      )
      .join("  ")
      .trimEnd();
  return [
    line(head),
    widths.map((width) => "─".repeat(Math.min(width, LONGEST_RULE))).join("  "),
    ...rows.map(line),
  ].join("\n");
}
