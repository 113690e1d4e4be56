import { useMutation } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, classes } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { notesChanged } from "./use-notes.ts";

/** One note: its text, when it reappears and for whom, and its tick. */
export function NoteLine({ note }: { readonly note: Schemas["Note"] }) {
  const { id, hireId, done, moment, on, owner, isDue, kind } = note;
  const tick = useMutation({
    mutationFn: (isDone: boolean) =>
      take(
        client.PUT("/api/notes/{noteId}/done", { params: { path: { noteId: id } }, body: { done: isDone } }),
      ),
    onSuccess: (notes) => notesChanged(hireId, notes),
  });
  const when = moment === null ? t("notes.moment.none") : t(`notes.moment.${moment}`);
  const facts = [
    on === null ? when : t("notes.when", { moment: when, on: dateText(on, "full") }),
    ...(owner === null ? [] : [t("notes.for", { name: owner.name })]),
    t("notes.meta", { by: note.by, at: dateText(note.at, "dayTime") }),
  ];
  return (
    <li className={classes("note", isDue && "note-due", done !== null && "note-done")}>
      <div>
        {kind === "promise" && <strong>{t("notes.promise")}: </strong>}
        {note.text}
        <div className="quiet">
          {isDue && <strong>{t("notes.due")} · </strong>}
          {done === null
            ? facts.join(" · ")
            : t("notes.doneBy", { by: done.by, at: dateText(done.at, "dayTime") })}
        </div>
        <FailureNote failure={tick.error} />
      </div>
      <Button
        look={done === null ? "plain" : "quiet"}
        onPress={() => tick.mutate(done === null)}
        isPending={tick.isPending}
        aria-label={`${t(done === null ? "notes.done" : "notes.undo")}: ${note.text}`}
      >
        {t(done === null ? "notes.done" : "notes.undo")}
      </Button>
    </li>
  );
}
