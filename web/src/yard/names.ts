import type { WalkRoundCheck } from "@setfair/engine";
import { figureText, has, say, t } from "../parts/words.ts";

/** Words of a part of the drawing; its id where there are none yet. */
export const partWords = (messageId: string): string =>
  has(messageId) ? say(messageId) : messageId.replace(/^part\./, "");

export const checkWords = (check: Pick<WalkRoundCheck, "id">): string =>
  has(`check.${check.id}`) ? say(`check.${check.id}`) : check.id;

export const viewWords = (view: string): string => say(`yard.view.${view}`);

export const sizeWords = (sizeMm: number | null): string =>
  sizeMm === null
    ? ""
    : sizeMm >= 1000
      ? t("yard.size.m", { n: sizeMm / 1000 })
      : sizeMm >= 10
        ? t("yard.size.cm", { n: sizeMm / 10 })
        : t("yard.size.mm", { n: sizeMm });

/** A value that was read or counted, with its unit; shares as per cent. */
export const measureWords = (value: number, unit: string | null): string =>
  figureText({ value, unit: unit ?? "" });
