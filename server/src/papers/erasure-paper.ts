import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import type { ErasureState } from "../desk/erasure-state.ts";
import { holdText } from "../desk/hold-text.ts";
import { facts, heading, paragraphs, quiet, table } from "./pieces.ts";

export interface ErasurePaperCall {
  readonly state: ErasureState;
  /** numbers of the person's hires */
  readonly hires: readonly string[];
  /** instant */
  readonly now: string;
}

/**
 * What the firm can show of an erasure, without naming whom: when and by whom, what went, what stays and why, and each
 * tablet of the yard with what it has done. One that was not heard of for long is named as to be looked for.
 */
export function erasurePaper({ state, hires, now }: ErasurePaperCall, words: Words): Content[] {
  const day = (instant: string) => words.dateText(instant, "fullTime");
  return [
    facts([
      [words.t("erasure.paper.state"), words.t("erasure.state", { state: state.state })],
      ...(state.at === null
        ? []
        : [[words.t("erasure.paper.at", { state: state.state }), day(state.at)] as const]),
      ...(state.by === null ? [] : [[words.t("erasure.paper.by"), state.by] as const]),
      ...(state.answerBy === null
        ? []
        : [[words.t("erasure.paper.answerBy"), words.dateText(state.answerBy, "full")] as const]),
      [words.t("erasure.paper.hires"), hires.join(", ")],
      [words.t("erasure.paper.asOf"), day(now)],
    ]),
    ...holdsBlock(state, words),
    heading(words.t("erasure.paper.gone")),
    ...paragraphs(words.t("erasure.paper.goneText")),
    heading(words.t("erasure.paper.stays")),
    ...paragraphs(words.t("erasure.paper.staysText")),
    heading(words.t("erasure.paper.tablets")),
    ...tabletsBlock(state, words),
    quiet(words.t("erasure.paper.source")),
  ];
}

function holdsBlock({ holds }: ErasureState, words: Words): Content[] {
  if (holds.length === 0) return [];
  return [heading(words.t("erasure.paper.holds")), { ul: holds.map((hold) => holdText(hold, words)) }];
}

function tabletsBlock({ tablets, unseenAfterDays, state }: ErasureState, words: Words): Content[] {
  if (tablets.length === 0) return [{ text: words.t("erasure.paper.noTablet") }];
  const lost = tablets.filter(
    ({ forgottenAt, unseenDays }) => forgottenAt === null && unseenDays >= unseenAfterDays,
  );
  return [
    table(
      [
        words.t("erasure.tablet"),
        words.t("erasure.tabletBy"),
        words.t("erasure.tabletSeen"),
        words.t("erasure.tabletKeeps"),
      ],
      tablets.map(({ id, by, seenAt, forgottenAt }) => [
        id,
        by ?? "–",
        words.dateText(seenAt, "dayTime"),
        forgottenAt === null
          ? words.t("erasure.tabletStill")
          : words.t("erasure.tabletForgot", { at: words.dateText(forgottenAt, "dayTime") }),
      ]),
      { widths: [70, "*", 110, 150] },
    ),
    ...(state === "erased" && lost.length > 0
      ? [
          {
            text: words.t("erasure.paper.lookFor", {
              ids: lost.map(({ id }) => id).join(", "),
              n: lost.length,
              days: unseenAfterDays,
            }),
            style: "strong",
          },
        ]
      : []),
  ];
}
