import { queries } from "../query-client.ts";

/** Whatever rests on rules is asked for again after one changed. */
export function rulesChanged(): void {
  for (const kind of ["rules", "hire", "abroad", "missing", "today", "hires"])
    void queries.invalidateQueries({ queryKey: [kind] });
}
