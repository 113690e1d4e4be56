import { useCallback, useState } from "react";

const keyOf = (name: string): string => `setfair.draft.${name}`;
/** what a draft began from, beside it */
const baseOf = (name: string): string => `${name}.base`;

export function readDraft<T>(name: string): T | null {
  try {
    const text = sessionStorage.getItem(keyOf(name));
    return text === null ? null : (JSON.parse(text) as T);
  } catch {
    return null;
  }
}

export function keepDraft(name: string, value: unknown): void {
  try {
    if (value === null) sessionStorage.removeItem(keyOf(name));
    else sessionStorage.setItem(keyOf(name), JSON.stringify(value));
  } catch {
    // storage full or refused: the form itself still holds what was typed
  }
}

/**
 * What is typed into a form, kept in this tab until it was sent: an error, a reload or a visit to another
 * page loses nothing. `done` forgets it. `base` is what the draft began from: where the server has something else by
 * now, somebody else has changed it meanwhile.
 */
export function useDraft<T>(
  name: string,
  initial: T,
): {
  readonly value: T;
  readonly set: (next: T) => void;
  readonly done: () => void;
  readonly isDirty: boolean;
  readonly base: T;
  readonly rebase: (next: T) => void;
} {
  const [draft, setDraft] = useState<T | null>(() => readDraft<T>(name));
  const [begun, setBegun] = useState<T | null>(() => readDraft<T>(baseOf(name)));
  const rebase = useCallback(
    (next: T | null) => {
      setBegun(next);
      keepDraft(baseOf(name), next);
    },
    [name],
  );
  const set = (next: T) => {
    if (draft === null) rebase(initial);
    setDraft(next);
    keepDraft(name, next);
  };
  const done = useCallback(() => {
    setDraft(null);
    keepDraft(name, null);
    rebase(null);
  }, [name, rebase]);
  return { value: draft ?? initial, set, done, isDirty: draft !== null, base: begun ?? initial, rebase };
}
