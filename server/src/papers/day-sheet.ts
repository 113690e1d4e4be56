import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import type { z } from "zod";
import type { todaySchema } from "../api/schemas/today.ts";
import { heading, quiet, table } from "./pieces.ts";

type Today = z.input<typeof todaySchema>;
type Line = Today["out"][number];

/** Printed the evening before: what goes out, what comes back, what still stops it, and room to write. */
export function daySheet(day: Today, words: Words): Content[] {
  const row = (hire: Line, at: string): string[] => [
    words.dateText(at, "time"),
    `${hire.vehicle?.registration ?? "–"}\n${hire.vehicle?.name ?? words.t("papers.noVehicle")}`,
    `${hire.customer}\n${hire.reference}`,
    hire.worst === null ? "" : findingText(hire.worst, words),
    "",
  ];
  const sheet = (title: string, hires: readonly Line[], at: (hire: Line) => string): Content[] => [
    heading(title),
    hires.length === 0
      ? { text: words.t("papers.nobody") }
      : table(
          [
            words.t("papers.time"),
            words.t("papers.vehicle"),
            words.t("papers.hirer"),
            words.t("papers.stillOpen"),
            words.t("papers.note"),
          ],
          hires.map((hire) => row(hire, at(hire))),
          { widths: [36, 84, 110, "*", 80] },
        ),
  ];
  return [
    ...sheet(words.t("papers.out", { n: day.out.length }), day.out, ({ from }) => from),
    ...sheet(words.t("papers.back", { n: day.back.length }), day.back, ({ to }) => to),
    ...sheet(words.t("papers.onTheRoad", { n: day.onTheRoad.length }), day.onTheRoad, ({ to }) => to),
    quiet(words.t("papers.printedAt", { at: words.dateText(day.now, "fullTime") })),
  ];
}

/** The day's answer carries the engine's own findings. */
const findingText = (finding: NonNullable<Line["worst"]>, words: Words): string =>
  words.findingText(finding as Parameters<Words["findingText"]>[0]);
