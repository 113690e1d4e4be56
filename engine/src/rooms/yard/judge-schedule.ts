import type { YardModel } from "./yard-model.ts";

/** What a schedule is judged by, first things first; less is better. */
export type Judgement = readonly [unplaced: number, first: number, second: number, third: number];

/** Below 0 where `a` is better. */
export function compareJudgements(a: Judgement, b: Judgement): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2] || a[3] - b[3];
}

/** End of the last job, in minutes. */
export function finishOf({ length, step }: YardModel, start: Int32Array): number {
  let finish = 0;
  for (let job = 0; job < start.length; job++)
    if (start[job]! >= 0) finish = Math.max(finish, start[job]! + length[job]!);
  return finish * step;
}

/** Sum of weight × minutes late. */
export function latenessOf({ length, step, dueBy, weight }: YardModel, start: Int32Array): number {
  let sum = 0;
  for (let job = 0; job < start.length; job++) {
    if (start[job]! < 0) continue;
    const late = (start[job]! + length[job]!) * step - dueBy[job]!;
    if (late > 0) sum += weight[job]! * late;
  }
  return sum;
}

/** Unit-minutes above the regular units. */
export function overtimeOf(model: YardModel, start: Int32Array): number {
  if (!model.hasOvertime) return 0;
  const { span, resources, needs, regular } = model;
  const used = new Int32Array(resources * span);
  for (let job = 0; job < start.length; job++) {
    if (start[job]! < 0) continue;
    for (const r of model.uses[job]!)
      for (let at = start[job]!; at < start[job]! + model.length[job]!; at++)
        used[r * span + at]! += needs[job * resources + r]!;
  }
  let sum = 0;
  for (let at = 0; at < used.length; at++) sum += Math.max(0, used[at]! - regular[at]!);
  return sum * model.step;
}

/** day: lateness, overtime, finish; otherwise finish, overtime, lateness. */
export function judgeSchedule(model: YardModel, start: Int32Array): Judgement {
  let unplaced = 0;
  for (const each of start) if (each < 0) unplaced++;
  const [finish, lateness, overtime] = [
    finishOf(model, start),
    latenessOf(model, start),
    overtimeOf(model, start),
  ];
  return model.forDay ? [unplaced, lateness, overtime, finish] : [unplaced, finish, overtime, lateness];
}
