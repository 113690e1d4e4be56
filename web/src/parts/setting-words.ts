import type { StopSetting } from "@setfair/engine/trip";
import { figureText, has, say, t } from "./words.ts";

/** What uses a store, by its kind: the tank of fresh water stands for its taps. */
export function drawName(kind: string): string {
  return t("use.of", { kind, name: has(`thing.${kind}`) ? say(`thing.${kind}`) : kind });
}

/** How to set one thing at a stop, in words. */
export function settingText({ kind, from, stage, rest, dayC, nightC }: StopSetting): string {
  if (kind !== "heating") return t("set.fridge", { from });
  return t("set.heating", {
    from,
    stage: stage === null ? "" : figureText(stage),
    rest: rest ?? "none",
    warm: dayC === null || nightC === null ? "no" : "yes",
    day: dayC === null ? "" : figureText(dayC),
    night: nightC === null ? "" : figureText(nightC),
  });
}
