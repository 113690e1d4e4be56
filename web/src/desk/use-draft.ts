import { useCallback, useState } from "react";

const keyOf = (name: string): string => `setfair.draft.${name}`;
/** what a draft began from, beside it */
const begunOf = (name: string): string => `${name}.begun`;

/** What the server had when the first letter was typed. */
interface Begun<T> {
  readonly value: T;
  readonly version: string;
}

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

/** Forgets whatever was typed in this tab and not sent: somebody was erased. */
export function forgetDrafts(): void {
  try {
    for (const key of Object.keys(sessionStorage))
      if (key.startsWith(keyOf(""))) sessionStorage.removeItem(key);
  } catch {
    // storage refused: nothing was kept
  }
}

/**
 * What is typed into a form, kept in this tab until it was sent: an error, a reload or a visit to another
 * page loses nothing. `done` forgets it. `begun` is what the draft began from, with the version that the server gave
 * it: where it has another by now, somebody else has changed it meanwhile.
 */
export function useDraft<T>(
  name: string,
  initial: T,
  version: string | number = "",
): {
  readonly value: T;
  readonly set: (next: T) => void;
  readonly done: () => void;
  readonly isDirty: boolean;
  readonly begun: Begun<T>;
  /** goes on from what the server has now */
  readonly rebase: () => void;
} {
  const now: Begun<T> = { value: initial, version: String(version) };
  const [draft, setDraft] = useState<T | null>(() => readDraft<T>(name));
  const [begun, setBegun] = useState<Begun<T> | null>(() => readDraft<Begun<T>>(begunOf(name)));
  const begin = useCallback(
    (next: Begun<T> | null) => {
      setBegun(next);
      keepDraft(begunOf(name), next);
    },
    [name],
  );
  const set = (next: T) => {
    if (draft === null) begin(now);
    setDraft(next);
    keepDraft(name, next);
  };
  const done = useCallback(() => {
    setDraft(null);
    keepDraft(name, null);
    begin(null);
  }, [name, begin]);
  const isDirty = draft !== null;
  return {
    value: draft ?? initial,
    set,
    done,
    isDirty,
    begun: isDirty && begun !== null ? begun : now,
    rebase: () => begin(now),
  };
}
