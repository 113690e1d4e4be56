import { buildByList } from "./build-schedule.ts";
import { compareJudgements, type Judgement, judgeSchedule } from "./judge-schedule.ts";
import { makeTimeline } from "./timeline.ts";
import type { YardModel } from "./yard-model.ts";

/**
 * Builds every order of a few jobs. Starting each as early as it fits, in the right order, is enough where a later end
 * is never better, so that the best of these is the best there is.
 */
export function tryEveryOrder(model: YardModel): Int32Array {
  const line = makeTimeline(model);
  const list: number[] = [];
  const start = new Int32Array(model.jobs);
  let best: { readonly start: Int32Array; readonly score: Judgement } | null = null;
  const go = () => {
    if (list.length === model.jobs) {
      buildByList(line, Int32Array.from(list), null, start);
      const score = judgeSchedule(model, start);
      if (best === null || compareJudgements(score, best.score) < 0) best = { start: start.slice(), score };
      return;
    }
    for (let job = 0; job < model.jobs; job++) {
      if (list.includes(job) || !model.before[job]!.every((each) => list.includes(each))) continue;
      list.push(job);
      go();
      list.pop();
    }
  };
  go();
  return (best as { readonly start: Int32Array } | null)?.start ?? start;
}
