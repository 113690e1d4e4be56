import type { AllocationModel } from "./allocation-model.ts";

/** The most hires that are out, or being turned round, at the same moment: fewer vehicles cannot serve them. */
export function mostOutAtOnce(model: AllocationModel, counts: (hire: number) => boolean): number {
  const change = new Int32Array(model.moments + 1);
  for (let hire = 0; hire < model.hires; hire++) {
    if (!counts(hire)) continue;
    change[model.startRank[hire]!]!++;
    change[model.endRank[hire]!]!--;
  }
  let out = 0;
  let most = 0;
  for (const step of change) {
    out += step;
    most = Math.max(most, out);
  }
  return most;
}
