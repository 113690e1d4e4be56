/** A job of a turnaround that is still open: when it is proposed to begin, civil `YYYY-MM-DDTHH:MM`, and how long it takes. */
interface OpenJob {
  readonly start: string | null;
  readonly minutes: number;
}

/** Civil time at which the last open job ends as proposed; null where one has no time or none is open. */
export function readyAt(open: readonly OpenJob[]): string | null {
  const ends = open.map(({ start, minutes }) => {
    if (start === null) return null;
    return new Date(Date.parse(`${start}:00Z`) + minutes * 60_000).toISOString().slice(0, 16);
  });
  if (ends.length === 0 || ends.includes(null)) return null;
  return ends.reduce((latest, end) => (end !== null && latest !== null && end > latest ? end : latest));
}
