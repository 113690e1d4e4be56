import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { has, say, t } from "../../../parts/words.ts";
import type { Asked } from "./ask-dialog.tsx";
import { EntriesCard } from "./entries-card.tsx";
import { type CardProps, field, ofKind, sendNote } from "./entry-parts.ts";
import { numberIn, saidIn } from "./use-settlement.ts";

const photographs = () => field("photographs", { kind: "photographs" });
const reason = () => field("reason", { kind: "text" });

/** Cleaning beyond the included standard: hours, and what shows it. */
export function CleaningCard({ hireId, state }: CardProps) {
  const isShown = state.frozenAt !== null;
  const entries = ofKind(state, "cleaning");
  if (isShown && entries.length === 0) return null;
  return (
    <EntriesCard
      id="cleaning"
      title={t("settling.cleaning.title")}
      lead={t("settling.cleaning.lead")}
      entries={entries}
      sayEntry={(entry) => [
        t("settling.hours", { hours: numberIn(entry, "hours") }),
        saidIn(entry, "reason"),
      ]}
      act="hire.settle"
      open={t("settling.cleaning.open")}
      dialog={
        isShown
          ? null
          : {
              hireId,
              title: t("settling.cleaning.title"),
              lead: t("settling.cleaning.lead"),
              fields: [field("hours", { kind: "number", unit: "h", max: 40 }), reason(), photographs()],
              act: t("settling.enter"),
              send: (entered) =>
                sendNote(hireId, {
                  kind: "cleaning",
                  hours: entered.number("hours"),
                  reason: entered.text("reason"),
                  photographs: entered.photographs("photographs"),
                }),
            }
      }
    />
  );
}

const placeName = (about: string): string =>
  [`check.${about}`, `part.${about}`, about].filter(has).map((id) => say(id))[0] ?? about;

/** Damage that came to light after the statement was shown. */
export function ClaimsCard({ hireId, state }: CardProps) {
  const found = useQuery({
    queryKey: ["differences", hireId],
    queryFn: () => take(client.GET("/api/hires/{id}/differences", { params: { path: { id: hireId } } })),
  });
  const out = (found.data?.outPhotographs ?? []).map(({ sha256, about }) => ({
    sha256,
    label: placeName(about),
  }));
  const fields: readonly Asked[] = [
    field("about", { kind: "text" }),
    field("partsPence", { kind: "pounds" }),
    field("labourPence", { kind: "pounds" }),
    field("ageYears", { kind: "number", unit: t("settling.years"), max: 60 }),
    field("lifeYears", { kind: "number", unit: t("settling.years"), max: 60 }),
    field("incident", { kind: "text", optional: true, note: t("settling.incidentNote") }),
    reason(),
    photographs(),
    field("departure", { kind: "pick", of: out }),
  ];
  return (
    <EntriesCard
      id="claim"
      title={t("settling.claim.title")}
      lead={t("settling.claim.lead")}
      entries={ofKind(state, "claim")}
      sayEntry={(entry) => [saidIn(entry, "about"), saidIn(entry, "reason")]}
      act="hire.settle"
      open={t("settling.claim.open")}
      dialog={{
        hireId,
        title: t("settling.claim.title"),
        lead: t("settling.claim.lead"),
        fields,
        act: t("settling.enter"),
        send: (entered) =>
          sendNote(hireId, {
            kind: "claim",
            about: entered.text("about"),
            partsPence: entered.pence("partsPence"),
            labourPence: entered.pence("labourPence"),
            ageYears: entered.number("ageYears"),
            lifeYears: entered.number("lifeYears"),
            incident: entered.text("incident") === "" ? null : entered.text("incident"),
            reason: entered.text("reason"),
            photographs: entered.photographs("photographs"),
            departure: entered.photographs("departure"),
          }),
      }}
    />
  );
}
