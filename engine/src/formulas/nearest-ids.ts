/** The ids most like a mistyped one, best first. */
export function nearestIds(id: string, ids: readonly string[], count = 5): readonly string[] {
  const wanted = id.toLowerCase();
  return ids
    .map((known) => ({
      known,
      steps: editSteps(wanted, known.toLowerCase()) - (known.split(".")[0] === wanted.split(".")[0] ? 3 : 0),
    }))
    .sort((a, b) => a.steps - b.steps || (a.known < b.known ? -1 : 1))
    .slice(0, count)
    .map(({ known }) => known);
}

/** Insertions, deletions and replacements between two words. */
function editSteps(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, k) => k);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next[j] = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1));
    }
    row = next;
  }
  return row[b.length]!;
}
