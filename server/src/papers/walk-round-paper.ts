import { composeWalkRound } from "@setfair/engine";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet, signLines, table } from "./pieces.ts";

/** A blank walk-round of this vehicle, for a day on which no device works; keyed in later it counts as a late entry. */
export const walkRoundPaper =
  (when: "out" | "back") =>
  (call: PaperCall): Content[] => {
    const { data, words } = call;
    if (data.vehicle === null)
      throw new Refusal("missing", { problems: [{ path: "vehicle", expected: "a vehicle on this hire" }] });
    const { steps } = composeWalkRound(data.vehicle.document.description, when);
    return [
      // it lies about in a yard
      facts(hireFacts({ ...call, withoutAddress: true })),
      quiet(words.t("papers.lateEntry")),
      ...steps.flatMap(({ view, checks }): Content[] => [
        heading(words.say(`view.${view}`)),
        table(
          [words.t("papers.check"), words.t("papers.seen"), words.t("papers.note")],
          [
            ...checks.map((check) => [checkText(check.id, words), blank(check, words), ""]),
            [words.t("papers.newMarks"), "", ""],
          ],
          { widths: [230, 110, "*"] },
        ),
      ]),
      signLines([words.t("papers.signHirer"), words.t("papers.signFirm")]),
    ];
  };

const checkText = (id: string, words: Words): string => words.say(`check.${id}`);

function blank(
  check: { readonly kind: string; readonly reading?: { readonly unit: string }; readonly expected?: number },
  words: Words,
): string {
  if (check.kind === "reading") return `______ ${check.reading?.unit ?? ""}`;
  if (check.kind === "count") return words.t("papers.ofExpected", { expected: check.expected ?? 0 });
  return words.t("papers.sameOrMark");
}
