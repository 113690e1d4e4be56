import { boundSchedule, type ScheduleBounds } from "./bound-schedule.ts";
import { buildByList, justify } from "./build-schedule.ts";
import { compareJudgements, type Judgement, judgeSchedule } from "./judge-schedule.ts";
import { slideFromOvertime } from "./slide-from-overtime.ts";
import { makeTimeline, type Timeline } from "./timeline.ts";
import { tryEveryOrder } from "./try-every-order.ts";
import type { YardModel } from "./yard-model.ts";

export interface FindSchedule {
  readonly draw: () => number;
  readonly isOver: () => boolean;
  readonly onProgress?: (best: number, bound: number) => void;
}

/** One order of the jobs, whether each keeps to regular units, and what comes of it. */
interface Way {
  readonly list: Int32Array;
  readonly noOvertime: Uint8Array;
  readonly start: Int32Array;
  readonly score: Judgement;
}

const FAMILY = 50;
const PATIENCE = 400;
/** so many families one after another may bring nothing better */
const IDLE_FAMILIES = 3;

/** Looks for the best schedule: orders of the jobs are bred, built and justified; small ones are tried whole. */
export function findSchedule(model: YardModel, search: FindSchedule) {
  const order = inOrder(model);
  const bounds = boundSchedule(model, order);
  const breeder: Breeder = { model, line: makeTimeline(model), ...search };
  let best = firstWays(breeder, order, bounds).reduce(better);
  const isBest = () => reachesBounds(model, best.score, bounds);
  if (!isBest() && model.jobs <= 8 && !model.hasOvertime) {
    const start = tryEveryOrder(model);
    return { start, bounds, proven: true };
  }
  for (let idle = 0; idle < IDLE_FAMILIES && !isBest() && !search.isOver(); idle++) {
    const found = breed(breeder, order, bounds, best);
    if (found !== best) idle = -1;
    best = found;
  }
  const start = slideFromOvertime(breeder.line, best.start);
  if (start !== null) best = { ...best, start, score: judgeSchedule(model, start) };
  return { start: best.start, bounds, proven: isBest() };
}

interface Breeder extends FindSchedule {
  readonly model: YardModel;
  readonly line: Timeline;
}

const better = (a: Way, b: Way) => (compareJudgements(b.score, a.score) < 0 ? b : a);

function reachesBounds(
  model: YardModel,
  [unplaced, first, second]: Judgement,
  bounds: ScheduleBounds,
): boolean {
  if (unplaced > 0) return false;
  return model.forDay ? first <= bounds.lateness + 1e-9 && second === 0 : first <= bounds.finish;
}

/** The jobs so that none stands before what it waits for. */
function inOrder(model: YardModel): Int32Array {
  const open = Int32Array.from(model.before, (list) => list.length);
  const order = [...open.keys()].filter((job) => open[job] === 0);
  for (let k = 0; k < order.length; k++)
    for (const next of model.after[order[k]!]!) if (--open[next]! === 0) order.push(next);
  return Int32Array.from(order);
}

/** Breeds one family until it brings nothing better for long; the best way of all. */
function breed(breeder: Breeder, order: Int32Array, bounds: ScheduleBounds, best: Way): Way {
  const { draw } = breeder;
  let top = best;
  const family = firstWays(breeder, order, bounds);
  family[0] = best;
  let idle = 0;
  while (idle < PATIENCE && !breeder.isOver()) {
    breeder.onProgress?.(top.score[1], breeder.model.forDay ? bounds.lateness : bounds.finish);
    idle++;
    for (let k = 0; k < FAMILY && !(k % 8 === 0 && breeder.isOver()); k++) {
      const child = bear(breeder, choose(family, draw), choose(family, draw));
      replaceWorst(family, child, draw);
      if (compareJudgements(child.score, top.score) >= 0) continue;
      top = child;
      idle = 0;
      if (reachesBounds(breeder.model, top.score, bounds)) return top;
    }
  }
  return top;
}

function choose(family: readonly Way[], draw: () => number): Way {
  const pick = () => family[Math.floor(draw() * family.length)]!;
  return better(pick(), pick());
}

/** Takes the place of the worse of three, unless it is worse still or another is just like it. */
function replaceWorst(family: Way[], child: Way, draw: () => number): void {
  let worst = Math.floor(draw() * family.length);
  for (let k = 0; k < 2; k++) {
    const other = Math.floor(draw() * family.length);
    if (compareJudgements(family[other]!.score, family[worst]!.score) > 0) worst = other;
  }
  if (compareJudgements(child.score, family[worst]!.score) > 0) return;
  if (family.some((each) => isSame(each.start, child.start))) return;
  family[worst] = child;
}

const isSame = (a: Int32Array, b: Int32Array) => a.every((start, job) => start === b[job]);

/** The order of one parent between two cuts within the order of the other, with a few jobs moved. */
function bear({ model, line, draw }: Breeder, mother: Way, father: Way): Way {
  const count = model.jobs;
  const [a, b] = [Math.floor(draw() * (count + 1)), Math.floor(draw() * (count + 1))];
  const [from, to] = a < b ? [a, b] : [b, a];
  const list = new Int32Array(count);
  const taken = new Uint8Array(count);
  let filled = 0;
  const take = (other: Int32Array, until: number) => {
    for (let k = 0; k < count && filled < until; k++) {
      if (taken[other[k]!] === 1) continue;
      taken[other[k]!] = 1;
      list[filled++] = other[k]!;
    }
  };
  take(mother.list, from);
  take(father.list, to);
  take(mother.list, count);
  for (let moves = draw() < 0.5 ? 1 : 3; moves > 0; moves--) moveOne(model, list, draw);
  const noOvertime = mother.noOvertime.map((bit, job) => (draw() < 0.5 ? bit : father.noOvertime[job]!));
  if (model.hasOvertime && count > 0) {
    const job = Math.floor(draw() * count);
    noOvertime[job] = noOvertime[job] === 1 ? 0 : 1;
  }
  return makeWay(model, line, list, noOvertime);
}

/** Moves one job to another place in the list, between what it waits for and what waits for it. */
function moveOne(model: YardModel, list: Int32Array, draw: () => number): void {
  const at = Math.floor(draw() * list.length);
  const job = list[at]!;
  const [before, after] = [model.before[job]!, model.after[job]!];
  let low = at;
  let high = at;
  while (low > 0 && !before.includes(list[low - 1]!)) low--;
  while (high < list.length - 1 && !after.includes(list[high + 1]!)) high++;
  const to = low + Math.floor(draw() * (high - low + 1));
  if (to < at) list.copyWithin(to + 1, to, at);
  else list.copyWithin(at, at + 1, to + 1);
  list[to] = job;
}

/** Builds a list, justifies it where that cannot make anything worse, and keeps the order that came of it. */
function makeWay(model: YardModel, line: Timeline, list: Int32Array, noOvertime: Uint8Array): Way {
  const start = new Int32Array(model.jobs);
  buildByList(line, list, model.hasOvertime ? noOvertime : null, start);
  const canJustify = !model.forDay && !model.hasOvertime && start.every((each) => each >= 0);
  if (canJustify) justify(line, start, list);
  return { list, noOvertime, start, score: judgeSchedule(model, start) };
}

/** The first family: by rules of priority, sharp and blurred. */
function firstWays({ model, line, draw }: Breeder, order: Int32Array, { head, tail }: ScheduleBounds): Way[] {
  const far = bySpan(model, head, tail);
  const due = latestEnds(model, order, far);
  const followers = model.after.map((list) => list.length);
  const rules: ((job: number) => number)[] = [
    (job) => due[job]! - model.length[job]!,
    (job) => due[job]!,
    (job) => far - tail[job]!,
    (job) => head[job]!,
    (job) => -followers[job]! * model.length[job]!,
  ];
  const scale = Math.max(1, far / 4);
  return Array.from({ length: FAMILY }, (_, k) => {
    const blur = k < rules.length ? 0 : scale * draw();
    const rank = Float64Array.from(order.keys(), (job) => rules[k % rules.length]!(job) + blur * draw());
    const noOvertime = new Uint8Array(model.jobs).fill(k % 2 === 0 ? 1 : 0);
    return makeWay(model, line, listByRank(model, rank), noOvertime);
  });
}

const bySpan = (model: YardModel, head: Int32Array, tail: Int32Array) =>
  head.reduce((most, each, job) => Math.max(most, each + model.length[job]! + tail[job]!), 1);

/** By when each job should end so that it and what waits for it are in time; without any `dueBy`, so that all is over. */
function latestEnds(model: YardModel, order: Int32Array, far: number): Float64Array {
  const due = Float64Array.from(model.dueBy, (minute) =>
    Number.isFinite(minute) ? minute / model.step : model.forDay ? 2 * far : far,
  );
  for (let k = order.length - 1; k >= 0; k--)
    for (const before of model.before[order[k]!]!)
      due[before] = Math.min(due[before]!, due[order[k]!]! - model.length[order[k]!]!);
  return due;
}

/** Least rank first among those that wait for nothing more. */
function listByRank(model: YardModel, rank: Float64Array): Int32Array {
  const open = Int32Array.from(model.before, (list) => list.length);
  const ready = [...open.keys()].filter((job) => open[job] === 0);
  const list = new Int32Array(model.jobs);
  for (let filled = 0; filled < model.jobs; filled++) {
    let at = 0;
    for (let k = 1; k < ready.length; k++) if (rank[ready[k]!]! < rank[ready[at]!]!) at = k;
    const job = ready[at]!;
    ready[at] = ready.at(-1)!;
    ready.pop();
    list[filled] = job;
    for (const next of model.after[job]!) if (--open[next]! === 0) ready.push(next);
  }
  return list;
}
