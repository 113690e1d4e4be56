import type { Schemas } from "../../../api/client.ts";
import { dateText, figureText, has, say, t } from "../../../parts/words.ts";

export type DueLine = Schemas["DueLine"];

export const dutyText = (kind: string): string => (has(`due.${kind}`) ? say(`due.${kind}`) : kind);

/** Day and distance at which a duty falls due. */
export function dueText({ dueOn, dueKm }: Pick<DueLine, "dueOn" | "dueKm">): string {
  const parts = [
    ...(dueOn === null ? [] : [dateText(dueOn, "short")]),
    ...(dueKm === null ? [] : [t("upkeep.km", { distance: figureText({ value: dueKm, unit: "km" }) })]),
  ];
  return parts.length === 0 ? t("upkeep.never") : parts.join(", ");
}

export const lastText = ({ last }: DueLine): string =>
  last === null ? t("upkeep.never") : t("upkeep.lastLine", { on: dateText(last.on, "short"), who: last.who });
