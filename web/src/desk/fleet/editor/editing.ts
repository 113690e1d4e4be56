import { t } from "../../../parts/words.ts";
import { type DraftProblem, problemsOf, type VehicleDraft, valueAt, withValue } from "./draft.ts";
import { OWN_PATHS } from "./vehicle-fields.ts";

/** What every step of the editor is given. */
export interface Editing {
  readonly draft: VehicleDraft;
  readonly set: (draft: VehicleDraft) => void;
  readonly problems: readonly DraftProblem[];
  /** the value at a path of the description */
  readonly at: (path: string) => unknown;
  readonly change: (path: string, value: unknown) => void;
  /** what is wrong with a field; gaps only once the reader has asked for the check */
  readonly wrongAt: (path: string) => string | undefined;
}

/** @param refused what the server said no to, by path in the description */
export function editingOf(
  draft: VehicleDraft,
  set: (draft: VehicleDraft) => void,
  refused: (path: string) => string | undefined,
): Editing {
  const problems = problemsOf(draft, OWN_PATHS);
  const shown = new Map(
    problems
      .filter(({ isGap }) => draft.isTried || !isGap)
      .map(({ path, expected, isGap }) => [path, isGap ? t("fleet.edit.needed") : expected]),
  );
  return {
    draft,
    set,
    problems,
    at: (path) => valueAt(draft.description, path),
    change: (path, value) => set({ ...draft, description: withValue(draft.description, path, value) }),
    wrongAt: (path) => shown.get(path) ?? refused(path),
  };
}
