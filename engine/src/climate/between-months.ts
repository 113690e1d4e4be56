/** Values between months: straight lines from mid-month to mid-month whose means over each month are the normals. */
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const STARTS = MONTH_DAYS.map((_, month) =>
  MONTH_DAYS.slice(0, month).reduce<number>((sum, days) => sum + days, 0),
);
const MIDS = MONTH_DAYS.map((days, month) => STARTS[month]! + days / 2);

/** The piece of the line on which a day of a 365-day year lies: its nodes, how far in its middle is, and its length, days. */
interface Piece {
  readonly before: number;
  readonly after: number;
  readonly into: number;
  readonly length: number;
}

function pieceOf(day: number): Piece {
  const x = day - 0.5;
  let k = 0;
  while (k < 12 && MIDS[k]! <= x) k++;
  const [before, after] = [(k + 11) % 12, k % 12];
  const x0 = MIDS[before]! - (k === 0 ? 365 : 0);
  const x1 = MIDS[after]! + (k === 12 ? 365 : 0);
  return { before, after, into: x - x0, length: x1 - x0 };
}

/** found once: the nodes of a place are asked for a hundred thousand values */
const PIECES: readonly Piece[] = Array.from({ length: 365 }, (_, k) => pieceOf(k + 1));

/** The line through mid-month nodes at the middle of a day of a 365-day year, `day` from 1. */
function onLine(nodes: readonly number[], day: number): number {
  const { before, after, into, length } = PIECES[day - 1]!;
  return nodes[before]! + ((nodes[after]! - nodes[before]!) * into) / length;
}

/** Mid-month nodes such that the mean of the lines over every month is the month's normal, to 1e-12. */
export function nodesKeepingMeans(normals: readonly number[]): readonly number[] {
  const nodes = [...normals];
  for (let round = 0; round < 60; round++) {
    const means = monthMeans(nodes);
    for (let month = 0; month < 12; month++) nodes[month] = nodes[month]! + normals[month]! - means[month]!;
  }
  return nodes;
}

export function monthMeans(nodes: readonly number[]): readonly number[] {
  return MONTH_DAYS.map((days, month) => {
    let sum = 0;
    for (let day = 1; day <= days; day++) sum += onLine(nodes, STARTS[month]! + day);
    return sum / days;
  });
}

/** Value on a day of the year (1 to 366; 29 February counts as the 28th) from nodes of {@link nodesKeepingMeans}. */
export function valueOnDay(nodes: readonly number[], dayOfYear: number, leapYear: boolean): number {
  return onLine(nodes, leapYear && dayOfYear > 59 ? dayOfYear - 1 : dayOfYear);
}
