import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import type { Direction } from "../../desk/record-facts.ts";
import { facts, heading, quiet, table } from "../pieces.ts";
import { clocksText, markText, thingText, valueText } from "./evidence-words.ts";
import { hashesOf, type KeptRecord, textOf } from "./kept-records.ts";
import { type Pictures, pictureGrid, type Shown } from "./pictures.ts";

type Records = readonly KeptRecord[];

/** When a walk-round began and ended, by which devices, by both clocks. */
function walkFacts(own: Records, words: Words): Content {
  const [first, last] = [own[0], own.at(-1)];
  const devices = new Set(own.map(({ record }) => record.deviceId));
  return facts([
    [words.t("proof.begun"), first === undefined ? "" : clocksText(first, words)],
    [words.t("proof.ended"), last === undefined ? "" : clocksText(last, words)],
    [words.t("proof.recorded"), words.t("proof.recordedBy", { n: own.length, devices: devices.size })],
  ]);
}

/** Marks with their photographs, then the other photographs of one walk-round. */
export async function walkBlock(
  kept: Records,
  direction: Direction,
  { pictures, words }: { readonly pictures: Pictures | undefined; readonly words: Words },
): Promise<Content[]> {
  const all = kept.filter((each) => each.direction === direction);
  if (all.length === 0) return [];
  // what the hirer added afterwards stands apart from the round that was signed
  const own = all.filter(({ content }) => content.by !== "hirer");
  const added = all.filter(({ record, content }) => record.kind === "mark" && content.by === "hirer");
  const marks = own.filter(({ record }) => record.kind === "mark");
  const grid = { pictures, words, columns: 4 } as const;
  const told = new Set(marks.flatMap(({ content }) => hashesOf(content.photographs)));
  const others = own
    .filter(({ record, content }) => record.kind === "photograph" && !told.has(textOf(content.sha256)))
    .map(
      ({ content }): Shown => ({
        sha256: textOf(content.sha256),
        words: thingText(textOf(content.about), words),
      }),
    );
  const blocks: Content[] = [
    heading(words.t(direction === "out" ? "proof.out" : "proof.back")),
    walkFacts(own, words),
    heading(words.t("proof.marks", { n: marks.length })),
  ];
  blocks.push(...(await markList(marks, grid)));
  if (others.length > 0) blocks.push(heading(words.t("proof.otherPhotographs", { n: others.length })));
  blocks.push(...(await pictureGrid(others, grid)));
  if (added.length > 0) blocks.push(heading(words.t("proof.addedByHirer", { n: added.length })));
  blocks.push(...(await markList(added, grid)));
  return blocks;
}

/** Marks in their order, each with both clocks and its photographs. */
async function markList(marks: Records, grid: Parameters<typeof pictureGrid>[1]): Promise<Content[]> {
  const blocks: Content[] = [];
  for (const [k, mark] of marks.entries()) {
    const text = markText(mark, grid.words);
    blocks.push({ text: `${k + 1}. ${text}` }, quiet(clocksText(mark, grid.words)));
    const shown = hashesOf(mark.content.photographs).map((sha256) => ({ sha256, words: text }));
    blocks.push(...(await pictureGrid(shown, grid)));
  }
  return blocks;
}

/** What was read or counted out and back, in one table; several that differ all stand there. */
export function measuredBlock(kept: Records, kind: "reading" | "count", words: Words): Content[] {
  const own = kept.filter(({ record, direction }) => record.kind === kind && direction !== null);
  const ids = [...new Set(own.map(({ content }) => textOf(content.checkId ?? content.about)))];
  if (ids.length === 0) return [];
  const said = (id: string, direction: Direction): string =>
    [
      ...new Set(
        own
          .filter((each) => each.direction === direction)
          .filter(({ content }) => textOf(content.checkId ?? content.about) === id)
          .map((each) => valueText(each, words) + (each.corrections.length > 0 ? " *" : "")),
      ),
    ].join(" / ");
  return [
    heading(words.t(`proof.measured.${kind}`)),
    table(
      [words.t("papers.what"), words.t("proof.outShort"), words.t("proof.backShort")],
      ids.map((id) => [thingText(id, words), said(id, "out"), said(id, "back")]),
      { widths: ["*", 110, 110] },
    ),
  ];
}

/** What could not be judged, so that it waits for a second look. */
export function tooWetBlock(kept: Records, words: Words): Content[] {
  const wet = kept.filter(({ content }) => (content.outcome ?? content.saw) === "tooWetOrDirty");
  if (wet.length === 0) return [];
  return [
    heading(words.t("proof.tooWet")),
    { ul: wet.map((each) => `${thingText(textOf(each.content.about), words)} (${clocksText(each, words)})`) },
  ];
}

/** What was put right later: what it was, what holds, who says so and why. */
export function correctionsBlock(kept: Records, words: Words): Content[] {
  const corrected = kept.filter(({ corrections }) => corrections.length > 0);
  if (corrected.length === 0) return [];
  return [
    heading(words.t("proof.corrections")),
    quiet(words.t("proof.correctionsStay")),
    table(
      [words.t("papers.what"), words.t("proof.was"), words.t("proof.holds"), words.t("proof.byAndWhy")],
      corrected.flatMap((each) =>
        each.corrections.map((correction) => [
          thingText(textOf(each.content.checkId ?? each.content.about), words),
          each.record.kind === "mark"
            ? markText({ content: each.record.content }, words)
            : valueText({ record: each.record, content: each.record.content }, words),
          each.record.kind === "mark" ? markText(each, words) : valueText(each, words),
          `${textOf(correction.content.by)}, ${words.dateText(correction.deviceTime, "fullTime")}: ${textOf(correction.content.why)}`,
        ]),
      ),
      { widths: ["*", "auto", "auto", "*"] },
    ),
  ];
}
