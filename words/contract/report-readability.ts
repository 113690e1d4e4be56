/** `npm run report:readability`: how easy the English cards are to read, and the ten hardest. */
import { type Ease, easeOfCards, easeOfFaultChecks, medianOf } from "./reading-ease.ts";

const BANDS = [
  ["under 45", -Infinity, 45],
  ["45 to 55", 45, 55],
  ["55 to 65", 55, 65],
  ["65 to 75", 65, 75],
  ["75 to 85", 75, 85],
  ["85 and over", 85, Infinity],
] as const;

function report(title: string, eases: readonly Ease[]): string {
  const bands = BANDS.map(([name, from, to]) => {
    const count = eases.filter(({ ease }) => ease >= from && ease < to).length;
    return `  ${name.padEnd(12)}${String(count).padStart(4)}  ${"#".repeat(Math.ceil(count / 2))}`;
  });
  const hardest = eases
    .slice(0, 10)
    .map(({ id, ease, text }) => `  ${ease.toFixed(0).padStart(4)}  ${id}\n        ${text}`);
  const median = medianOf(eases).toFixed(1);
  return [
    `${title}: ${eases.length}, median ${median} on Flesch's scale`,
    ...bands,
    "  the ten hardest:",
    ...hardest,
  ].join("\n");
}

process.stdout.write(`${report("Cards of the briefing", easeOfCards())}\n\n`);
process.stdout.write(`${report("Steps of the fault finder", easeOfFaultChecks())}\n`);
