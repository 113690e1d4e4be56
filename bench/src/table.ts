import type { Line } from "./line.ts";

/** Four figures that count, without an exponent for what a table holds. */
export function shown(value: number | null): string {
  if (value === null) return "–";
  if (value === 0 || Math.abs(value) < 1e-4) return value === 0 ? "0" : value.toExponential(1);
  const digits = Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.min(digits, 4));
}

/** The lines as text, one part under the other. */
export function table(lines: readonly Line[]): string {
  const wide = Math.max(...lines.map(({ what }) => what.length));
  const rows: string[] = [];
  let part = "";
  for (const { part: of, what, value, unit, note } of lines) {
    if (of !== part) rows.push("", of);
    part = of;
    const figure = `${shown(value).padStart(10)} ${unit.padEnd(20)}`;
    rows.push(`  ${what.padEnd(wide)} ${figure}${note === undefined ? "" : ` ${note}`}`.trimEnd());
  }
  return rows.join("\n").trimStart();
}
