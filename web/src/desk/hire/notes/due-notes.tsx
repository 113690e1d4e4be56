import { t } from "../../../parts/words.ts";
import type { PartProps } from "../use-hire.ts";
import { NoteLine } from "./note-line.tsx";
import { useNotes } from "./use-notes.ts";
import "./notes.css";

/** On the hire's first page: what must not be forgotten now. Nothing where no moment has come. */
export function DueNotes({ page }: PartProps) {
  const notes = useNotes(page.hire.id);
  const due = notes.data?.notes.filter(({ isDue }) => isDue) ?? [];
  if (due.length === 0) return null;
  return (
    <section className="card" aria-labelledby="due-notes-title">
      <h2 id="due-notes-title">{t("notes.today")}</h2>
      <ul className="notes">
        {due.map((note) => (
          <NoteLine key={note.id} note={note} />
        ))}
      </ul>
    </section>
  );
}
