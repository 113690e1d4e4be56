import { t } from "../../../parts/words.ts";
import { EntriesCard } from "./entries-card.tsx";
import { type CardProps, field, joined, ofKind, pounds, sendNote } from "./entry-parts.ts";
import { type Entry, resultOf, saidIn } from "./use-settlement.ts";

const LOSSES = ["nextHirer", "overtime", "lostDay"] as const;

/** The kind and the sum of a loss. */
const lossText = (entry: Entry): string =>
  joined(t("late.loss", { loss: saidIn(entry, "what") }), pounds(entry, "pence"));

/** What a late return really cost: without it the line of the late return is nothing. */
export function LossCard({ hireId, state }: CardProps) {
  if (!resultOf(state).lines.some(({ code }) => code === "late")) return null;
  const isShown = state.frozenAt !== null;
  const entries = ofKind(state, "loss");
  return (
    <EntriesCard
      id="loss"
      title={t("late.title")}
      lead={t(isShown && entries.length === 0 ? "late.none" : "late.lead")}
      entries={entries}
      sayEntry={(entry) => [lossText(entry), saidIn(entry, "reason")]}
      act="hire.settle"
      open={t("late.open")}
      dialog={
        isShown
          ? null
          : {
              hireId,
              title: t("late.title"),
              lead: t("late.lead"),
              fields: [
                field("what", {
                  kind: "choice",
                  start: "overtime",
                  options: LOSSES.map((value) => ({ value, label: t("late.loss", { loss: value }) })),
                }),
                field("pence", { kind: "pounds", label: t("late.pence") }),
                field("reason", { kind: "text", label: t("late.reason") }),
                field("photographs", { kind: "photographs", label: t("late.paper") }),
              ],
              act: t("settling.enter"),
              send: (entered) =>
                sendNote(hireId, {
                  kind: "loss",
                  what: LOSSES.find((value) => value === entered.text("what")) ?? "overtime",
                  pence: entered.pence("pence"),
                  reason: entered.text("reason"),
                  photographs: entered.photographs("photographs"),
                }),
            }
      }
    />
  );
}
