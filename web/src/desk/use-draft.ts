import { useCallback, useState } from "react";

const keyOf = (name: string): string => `setfair.draft.${name}`;

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
 * page loses nothing. `done` forgets it.
 */
export function useDraft<T>(
  name: string,
  initial: T,
): {
  readonly value: T;
  readonly set: (next: T) => void;
  readonly done: () => void;
  readonly isDirty: boolean;
} {
  const [draft, setDraft] = useState<T | null>(() => readDraft<T>(name));
  const set = useCallback(
    (next: T) => {
      setDraft(next);
      keepDraft(name, next);
    },
    [name],
  );
  const done = useCallback(() => {
    setDraft(null);
    keepDraft(name, null);
  }, [name]);
  return { value: draft ?? initial, set, done, isDirty: draft !== null };
}
