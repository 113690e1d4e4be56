import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { say, t } from "../../../parts/words.ts";
import type { Asked } from "./ask-dialog.tsx";
import { EntriesCard } from "./entries-card.tsx";
import { type CardProps, field, joined, ofKind, pounds } from "./entry-parts.ts";
import { numberIn, saidIn } from "./use-settlement.ts";

const NOW = ["kept", "posted", "collected", "givenAway"] as const;

/** What was left behind: what, where it lay, what became of it, what the post cost. */
export function LostCard({ hireId, state }: CardProps) {
  const fields: readonly Asked[] = [
    field("what", { kind: "text", label: t("settling.field.lostWhat") }),
    field("where", { kind: "text", label: t("settling.field.lostWhere") }),
    field("now", {
      kind: "select",
      start: "kept",
      options: NOW.map((value) => ({ value, label: t(`settling.now.${value}`) })),
    }),
    field("costPence", { kind: "pounds", start: 0 }),
    field("note", { kind: "text", optional: true }),
  ];
  return (
    <EntriesCard
      id="lost"
      title={t("settling.lost.title")}
      lead={t("settling.lost.lead")}
      entries={ofKind(state, "lost")}
      sayEntry={(entry) => [
        joined(saidIn(entry, "what"), say(`settling.now.${saidIn(entry, "now")}`)),
        joined(
          saidIn(entry, "where"),
          numberIn(entry, "costPence") === 0 ? "" : t("settling.post", { money: pounds(entry, "costPence") }),
          saidIn(entry, "note"),
        ),
      ]}
      act="hire.write"
      open={t("settling.lost.open")}
      dialog={{
        hireId,
        title: t("settling.lost.title"),
        lead: t("settling.lost.lead"),
        fields,
        act: t("settling.enter"),
        send: (entered) =>
          take(
            client.POST("/api/hires/{id}/lost-property", {
              params: { path: { id: hireId } },
              body: {
                what: entered.text("what"),
                where: entered.text("where"),
                now: NOW.find((value) => value === entered.text("now")) ?? "kept",
                costPence: entered.pence("costPence"),
                note: entered.text("note"),
              },
            }),
          ),
      }}
    />
  );
}
