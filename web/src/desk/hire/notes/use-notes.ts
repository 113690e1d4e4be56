import { useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { queries } from "../../query-client.ts";

/** The notes of a hire, and what shows them, after one changed. */
export function notesChanged(hireId: string, notes: Schemas["HireNotes"]): void {
  queries.setQueryData(["notes", hireId], notes);
  for (const kind of ["reminders", "hire"]) void queries.invalidateQueries({ queryKey: [kind] });
}

export function useNotes(id: string) {
  return useQuery({
    queryKey: ["notes", id],
    queryFn: () => take(client.GET("/api/hires/{id}/notes", { params: { path: { id } } })),
  });
}
