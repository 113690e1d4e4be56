/** `npm run report:forecast`: forecasts of the engine against the outcomes of the invented firm, before and after. */
import { judgeHistory } from "./judge-history.ts";

const DAY = process.argv[2] ?? "2026-11-25";
const { hires, taught, cutOn, before, after, calibration } = judgeHistory(DAY);
const percent = (value: number) => `${Math.round(100 * value)} %`.padStart(6);
const line = (cells: readonly string[]) => cells.map((cell) => cell.padStart(11)).join("");

process.stdout.write(
  [
    `${hires} returns up to ${DAY}: the first ${taught} teach, those from ${cutOn.slice(0, 10)} on are judged.`,
    "Outcomes come from rules of thumb that know nothing of the engine; P10 to P90 is meant to cover 80 %.",
    "",
    line(["store", "outcomes", "covered", "bias", "covered", "bias", "rate", "spread"]),
    line(["", "", "before", "before", "after", "after", "of depot", "added"]),
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
        rate?.spread.value.toFixed(2) ?? "",
      ]);
    }),
    "",
  ].join("\n"),
);
