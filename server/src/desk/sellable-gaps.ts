/** What holds a vehicle; a hire has its turnaround on either side of the next. */
export interface Held {
  readonly vehicleId: string;
  /** instants */
  readonly from: string;
  readonly to: string;
  readonly isHire?: boolean;
}
export interface GapQuestion {
  readonly vehicles: readonly string[];
  readonly held: readonly Held[];
  readonly from: string;
  readonly to: string;
  readonly nights: number;
  readonly turnaroundMinutes: number;
}

/** How many hires of so many nights the free time between `from` and `to` still holds, all vehicles together. */
export function countGaps({ vehicles, held, from, to, nights, turnaroundMinutes }: GapQuestion): number {
  const turnaround = turnaroundMinutes * 60_000;
  const length = nights * 86_400_000;
  const [start, end] = [Date.parse(from), Date.parse(to)];
  let count = 0;
  for (const vehicle of vehicles) {
    const own = held
      .filter(({ vehicleId }) => vehicleId === vehicle)
      .map((each) => ({
        start: Date.parse(each.from) - (each.isHire === true ? turnaround : 0),
        end: Date.parse(each.to) + (each.isHire === true ? turnaround : 0),
      }))
      .sort((a, b) => a.start - b.start);
    let free = start;
    for (const { start: taken, end: ready } of [...own, { start: end, end }]) {
      const gap = Math.min(taken, end) - free;
      // one after the other, with a turnaround between them
      if (gap >= length) count += Math.floor((gap + turnaround) / (length + turnaround));
      free = Math.max(free, ready);
    }
  }
  return count;
}

/** The vehicle on which two hires meet, the turnaround between them counted; null where none do. */
export function findClash(held: readonly Held[], turnaroundMinutes: number): string | null {
  const turnaround = turnaroundMinutes * 60_000;
  const inOrder = [...held].sort((a, b) => (a.from < b.from ? -1 : 1));
  const ready = new Map<string, number>();
  for (const { vehicleId, from, to } of inOrder) {
    if (Date.parse(from) < (ready.get(vehicleId) ?? 0)) return vehicleId;
    ready.set(vehicleId, Date.parse(to) + turnaround);
  }
  return null;
}
