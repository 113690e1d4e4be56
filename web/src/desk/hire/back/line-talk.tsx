import type { SettlementLine } from "@setfair/engine";
import { dateText, moneyText, t } from "../../../parts/words.ts";
import { Photos } from "./photos.tsx";
import { type Entry, hashesIn, numberIn, saidIn } from "./use-settlement.ts";

const OF_LINES: readonly Entry["kind"][] = [
  "accept",
  "dispute",
  "reply",
  "withdraw",
  "estimate",
  "invoice",
  "second",
  "age",
  "awaiting",
  "mended",
];

/** What was said and paid of one line, oldest first. */
export const talkOf = (line: SettlementLine, entries: readonly Entry[]): readonly Entry[] =>
  talkAbout([line.id, line.evidence.differenceId], entries);

/** Likewise of whatever goes by one of these ids. */
export const talkAbout = (ids: readonly (string | null)[], entries: readonly Entry[]): readonly Entry[] =>
  entries.filter(({ kind, about }) => OF_LINES.includes(kind) && ids.includes(about));

const pounds = (entry: Entry, name: string): string =>
  moneyText({ currency: "GBP", pence: numberIn(entry, name) });

/** What an entry says beyond its kind. */
function entryText(entry: Entry): string {
  const parts: string[] = [];
  if (entry.kind === "estimate" || entry.kind === "invoice")
    parts.push(
      t("settling.cost", { parts: pounds(entry, "partsPence"), labour: pounds(entry, "labourPence") }),
    );
  if (entry.kind === "age") parts.push(t("settling.ageIs", { years: numberIn(entry, "ageYears") }));
  if (entry.kind === "awaiting") parts.push(t("settling.atMost", { money: pounds(entry, "mostPence") }));
  for (const name of ["who", "reference", "text", "reason", "note"]) {
    const said = saidIn(entry, name);
    if (said !== "") parts.push(said);
  }
  return parts.join(" · ");
}

/** The talk about a line: hirer and desk in turn, costs and signatures between them; all of it stays. */
export function LineTalk({ talk }: { readonly talk: readonly Entry[] }) {
  if (talk.length === 0) return null;
  return (
    <ul className="talk">
      {talk.map((entry) => (
        <li key={entry.id} className={entry.by === null ? "talk-line talk-hirer" : "talk-line"}>
          <span>
            <strong>{t("settling.said", { kind: entry.kind })}</strong> {entryText(entry)}
          </span>
          <span className="quiet">
            {t("settling.saidBy", {
              by: entry.by ?? t("settling.hirer"),
              at: dateText(entry.at, "fullTime"),
            })}
          </span>
          {hashesIn(entry, "photographs").length > 0 && (
            <Photos hashes={hashesIn(entry, "photographs")} label={entryText(entry)} small />
          )}
        </li>
      ))}
    </ul>
  );
}
