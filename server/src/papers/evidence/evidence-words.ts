import type { Words } from "@setfair/words";
import { type KeptRecord, numberOf, textOf } from "./kept-records.ts";

const firstKnown = (words: Words, ids: readonly string[], otherwise: string): string => {
  const id = ids.find((each) => words.has(each));
  return id === undefined ? otherwise : words.say(id);
};

/** A part of the vehicle or a check by its name; its id where there is none. */
export const thingText = (id: string, words: Words): string =>
  id.startsWith("view.")
    ? firstKnown(words, [`yard.${id}`], id)
    : firstKnown(words, [`check.${id}`, `part.${id}`, id], id);

export const viewText = (view: string, words: Words): string =>
  firstKnown(words, [`yard.view.${view}`], view);

const markKindText = (kind: string, words: Words): string =>
  firstKnown(words, [`yard.markKind.${kind}`], kind);

const sizeText = (sizeMm: number | null, words: Words): string =>
  sizeMm === null ? "" : words.figureText({ value: sizeMm, unit: "mm" });

/** Where, what, how large, and what was written beside it. */
export function markText({ content }: Pick<KeptRecord, "content">, words: Words): string {
  const place = `${viewText(textOf(content.view), words)}, ${thingText(textOf(content.part ?? content.about), words)}`;
  const what = [markKindText(textOf(content.markKind), words), sizeText(numberOf(content.sizeMm), words)];
  const note = textOf(content.note);
  return [place, what.filter((text) => text !== "").join(" "), ...(note === "" ? [] : [note])].join(" · ");
}

/** What was read, counted or seen, with its unit. */
export function valueText({ record, content }: Pick<KeptRecord, "record" | "content">, words: Words): string {
  if (record.kind === "count") return String(numberOf(content.found) ?? "–");
  if (record.kind === "reading") {
    const value = numberOf(content.value);
    return value === null
      ? String(content.value ?? "–")
      : words.figureText({ value, unit: textOf(content.unit) });
  }
  const saw = textOf(content.outcome ?? content.saw);
  return firstKnown(words, [`yard.saw.${saw}`], saw);
}

/** One line for any record: what it is and what it is about. */
export function recordText(kept: Pick<KeptRecord, "record" | "content">, words: Words): string {
  const { record, content } = kept;
  const kind = firstKnown(words, [`proof.kind.${record.kind}`, `yard.kind.${record.kind}`], record.kind);
  if (record.kind === "mark") return `${kind}: ${markText(kept, words)}`;
  if (record.kind === "signature") {
    const { name } = content.signer as { readonly name: string };
    return `${kind}: ${name}, ${purposeText(textOf(content.purpose), words)}`;
  }
  const about = textOf(content.about);
  const said = ["reading", "count", "look"].includes(record.kind) ? `, ${valueText(kept, words)}` : "";
  return about === "" ? kind : `${kind}: ${thingText(about, words)}${said}`;
}

export const purposeText = (purpose: string, words: Words): string =>
  firstKnown(words, [`proof.purpose.${purpose}`], purpose);

/** Both clocks: the device's own, and the depot's when it arrived. */
export const clocksText = (
  { record, receipt }: Pick<KeptRecord, "record" | "receipt">,
  words: Words,
): string =>
  words.t("proof.clocks", {
    device: words.dateText(record.deviceTime, "fullTime"),
    arrived: words.dateText(receipt.at, "fullTime"),
  });
