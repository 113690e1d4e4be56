import type { LoadKept, LoadName, PostSize } from "@setfair/engine/trip";
import { figureText, t } from "./words.ts";

export const loadName = ({ kind }: LoadName): string => t("onPost.load", { kind });

/** One load that may stay on beside the others, with its stage and what stands in for the rest. */
export function keptText(load: LoadKept): string {
  const words = { load: loadName(load), instead: load.instead, stage: figureText(load.stage) };
  if (load.stage.value === 0) return t("onPost.keptOff", words);
  if (load.stage.value >= load.full.value) return t("onPost.keptAll", words);
  return t("onPost.keptPart", { ...words, full: figureText(load.full) });
}

/** What to turn down, in order, before something is switched on for minutes. */
export function beforeText({ fits, shed, ...name }: PostSize["before"][number]): string {
  const load = loadName(name);
  if (!fits) return t("onPost.beforeNever", { load });
  if (shed.length === 0) return t("onPost.beforeNone", { load });
  const things = shed.map(({ toW, ...off }) =>
    toW === 0
      ? t("onPost.shedOff", { load: loadName(off) })
      : t("onPost.shedTo", { load: loadName(off), stage: figureText({ value: toW, unit: "W" }) }),
  );
  return t("onPost.beforeSome", { load, things: things.join(", ") });
}
