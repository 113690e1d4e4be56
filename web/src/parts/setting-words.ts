import type { StopSetting } from "@setfair/engine/trip";
import { figureText, t } from "./words.ts";

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
