/**
 * `npm run report:forecast [day]`: forecasts of the engine against the outcomes of the invented firm, before and after.
 * `npm run report:forecast -- --days [day …]`: of many days in short, a day of each month where none is named.
 */
import type { StoreJudgement } from "@setfair/engine";
import { judgeHistory } from "./judge-history.ts";

const MANY_DAYS = ["01-15", "02-14", "03-20", "04-18", "05-23", "06-20", "07-15", "08-22", "09-19", "10-17"]
  .map((day) => `2026-${day}`)
  .concat("2026-11-25", "2026-11-30", "2026-12-22");
const percent = (value: number) => `${Math.round(100 * value)} %`.padStart(6);
const line = (cells: readonly string[]) => cells.map((cell) => cell.padStart(12)).join("");
const write = (lines: readonly string[]) => process.stdout.write(`${lines.join("\n")}\n`);

/** Eight in ten are meant to lie within the band: 70 to 90 %; no more than a tenth off on the whole. */
const isAsMeant = ({ coverage, bias }: StoreJudgement) =>
  coverage.value >= 0.7 && coverage.value <= 0.9 && Math.abs(bias.value) < 0.1;
/** Fewer outcomes say too little: with 40 a band that is right lies outside 70 to 90 % one time in fourteen. */
const ENOUGH = 40;
const isJudged = ({ count }: StoreJudgement) => count >= ENOUGH;
const inShort = (judged: StoreJudgement) =>
  `${!isJudged(judged) ? "~" : isAsMeant(judged) ? "" : "*"}${Math.round(100 * judged.coverage.value)}/${Math.round(100 * judged.bias.value)}`;

function reportDays(days: readonly string[]): void {
  write([
    "Within P10 to P90 / bias, both in %, with what the earlier returns taught; * is not as meant, ~ too few outcomes to say.",
    "",
  ]);
  let [judged, good, goodDays] = [0, 0, 0];
  for (const day of days) {
    const { after } = judgeHistory(day);
    if (judged === 0) write([line(["day", ...after.map(({ store }) => store)])]);
    write([line([day, ...after.map(inShort)])]);
    const told = after.filter(isJudged);
    judged += told.length;
    good += told.filter(isAsMeant).length;
    if (told.every(isAsMeant)) goodDays++;
  }
  write([
    "",
    `${good} of ${judged} stores as meant; ${goodDays} of ${days.length} days with all their stores.`,
  ]);
}

function reportDay(day: string): void {
  const { hires, taught, judgedFrom, before, after, calibration } = judgeHistory(day);
  write([
    `${hires} returns up to ${day}: the first ${taught} only teach; those from ${judgedFrom.slice(0, 10)} on are judged,`,
    "each forecast with the rates that the returns before its departure have taught.",
    "Outcomes come from rules of thumb that know nothing of the engine; P10 to P90 is meant to cover 80 %.",
    "",
    line(["store", "outcomes", "covered", "bias", "covered", "bias", "rate", "of heating", "spread"]),
    line(["", "", "before", "before", "after", "after", "of depot", "", "added"]),
    ...before.map(({ store, count, coverage, bias }) => {
      const then = after.find((each) => each.store === store);
      const rate = calibration.depot.find((each) => each.store === store);
      return line([
        store,
        String(count),
        percent(coverage.value),
        percent(bias.value),
        percent(then?.coverage.value ?? Number.NaN),
        percent(then?.bias.value ?? Number.NaN),
        rate?.rate.value.toFixed(2) ?? "",
        rate?.warmth?.value.toFixed(2) ?? "",
        rate?.spread.value.toFixed(2) ?? "",
      ]);
    }),
  ]);
}

const [first, ...others] = process.argv.slice(2);
if (first === "--days") reportDays(others.length > 0 ? others : MANY_DAYS);
else reportDay(first ?? "2026-11-25");
