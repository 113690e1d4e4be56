/** Linear interpolation in a table of [x, y] sorted by x; held at the ends. */
export function interpolate(table: readonly (readonly [number, number])[], x: number): number {
  const last = table.length - 1;
  if (x <= table[0]![0]) return table[0]![1];
  if (x >= table[last]![0]) return table[last]![1];
  let k = 1;
  while (table[k]![0] < x) k++;
  const [x0, y0] = table[k - 1]!;
  const [x1, y1] = table[k]!;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
