import { useState } from "react";
import { dateText, say, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { newId } from "../money/use-money.ts";
import type { Asked } from "./ask-dialog.tsx";
import { EntriesCard } from "./entries-card.tsx";
import { type CardProps, field, joined, ofKind, pounds, sendNote } from "./entry-parts.ts";
import { NoticeTalk } from "./notice-talk.tsx";
import { numberIn, saidIn } from "./use-settlement.ts";

/** Fines and tolls that are passed on, each with its notice. */
export function NoticesCard({ hireId, state }: CardProps) {
  const [id, setId] = useState(newId);
  const fields: readonly Asked[] = [
    field("what", {
      kind: "choice",
      start: "fine",
      options: (["fine", "toll"] as const).map((value) => ({ value, label: t(`lineKind.${value}`) })),
    }),
    field("issuer", { kind: "text" }),
    field("reference", { kind: "text", label: t("settling.field.noticeNumber"), note: "" }),
    field("at", { kind: "dateTime" }),
    field("where", { kind: "text" }),
    field("pence", { kind: "pounds" }),
    field("feePence", { kind: "pounds", note: t("settling.field.feeNote"), start: 0 }),
    field("photographs", { kind: "photographs", label: t("settling.field.noticeCopy") }),
  ];
  return (
    <EntriesCard
      id="notice"
      title={t("settling.notice.title")}
      lead={t("settling.notice.lead")}
      entries={ofKind(state, "notice")}
      sayEntry={(entry) => [
        joined(t("settling.noticeOf", { what: saidIn(entry, "what") }), pounds(entry, "pence")),
        joined(
          saidIn(entry, "issuer"),
          saidIn(entry, "reference"),
          dateText(saidIn(entry, "at"), "fullTime"),
          saidIn(entry, "where"),
          numberIn(entry, "feePence") === 0 ? "" : t("settling.fee", { money: pounds(entry, "feePence") }),
        ),
      ]}
      under={(entry, head) => (
        <NoticeTalk hireId={hireId} state={state} lineId={`notice:${entry.id}`} name={head} />
      )}
      act="hire.settle"
      open={t("settling.notice.open")}
      dialog={{
        hireId,
        title: t("settling.notice.title"),
        lead: t("settling.notice.lead"),
        fields,
        act: t("settling.notice.send"),
        send: async (entered) => {
          const after = await sendNote(hireId, {
            kind: "notice",
            id,
            what: entered.text("what") === "toll" ? "toll" : "fine",
            issuer: entered.text("issuer"),
            reference: entered.text("reference"),
            at: entered.text("at"),
            where: entered.text("where"),
            pence: entered.pence("pence"),
            feePence: entered.pence("feePence"),
            photographs: entered.photographs("photographs"),
          });
          setId(newId());
          return after;
        },
      }}
    />
  );
}

const WITH = ["insurer", "thirdParty"] as const;
const STATES = ["opened", "sent", "answered", "paid", "closed"] as const;

/** The file with the insurer, and with whoever else was part of an accident. */
export function FilesCard({ hireId, state }: CardProps) {
  const { today } = useSignedIn();
  const fields: readonly Asked[] = [
    field("with", {
      kind: "choice",
      start: "insurer",
      options: WITH.map((value) => ({ value, label: t(`settling.with.${value}`) })),
    }),
    field("name", { kind: "text" }),
    field("reference", { kind: "text", label: t("settling.field.fileNumber") }),
    field("on", { kind: "date", start: today }),
    field("state", {
      kind: "select",
      start: "opened",
      options: STATES.map((value) => ({ value, label: t(`settling.state.${value}`) })),
    }),
    field("paidPence", { kind: "pounds", start: 0 }),
    field("note", { kind: "text", lines: 3, optional: true }),
  ];
  return (
    <EntriesCard
      id="file"
      title={t("settling.file.title")}
      lead={t("settling.file.lead")}
      entries={ofKind(state, "file")}
      sayEntry={(entry) => [
        joined(say(`settling.with.${saidIn(entry, "with")}`), saidIn(entry, "name")),
        joined(
          saidIn(entry, "reference"),
          say(`settling.state.${saidIn(entry, "state")}`),
          dateText(saidIn(entry, "on"), "full"),
          numberIn(entry, "paidPence") === 0 ? "" : t("settling.paid", { money: pounds(entry, "paidPence") }),
          saidIn(entry, "note"),
        ),
      ]}
      act="hire.settle"
      open={t("settling.file.open")}
      dialog={{
        hireId,
        title: t("settling.file.title"),
        lead: t("settling.file.lead"),
        fields,
        act: t("settling.enter"),
        send: (entered) =>
          sendNote(hireId, {
            kind: "file",
            with: WITH.find((value) => value === entered.text("with")) ?? "insurer",
            name: entered.text("name"),
            reference: entered.text("reference"),
            on: entered.text("on"),
            state: STATES.find((value) => value === entered.text("state")) ?? "opened",
            paidPence: entered.pence("paidPence"),
            note: entered.text("note"),
          }),
      }}
    />
  );
}
