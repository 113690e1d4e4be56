import { Failure } from "../../api/failure.ts";
import { useDraft } from "../use-draft.ts";
import { isSame } from "./differences.ts";

/** Something that is kept whole, as the server has it. */
export interface Kept<T> {
  readonly value: T;
  /** changes with every save */
  readonly version: string | number;
  /** of what is kept by dates: the version written last, which may hold from another day than `value` */
  readonly newest?: T;
}

/** A draft of something that is kept whole, and that somebody else may keep meanwhile. */
export interface GuardedDraft<T> {
  readonly value: T;
  readonly set: (next: T) => void;
  /** forgets what was typed */
  readonly done: () => void;
  readonly isDirty: boolean;
  /** what both began from */
  readonly base: T;
  /** goes with the save: the server refuses where it has another by now */
  readonly basedOn: string;
  /** what somebody else kept since this was begun; null where nobody did */
  readonly other: T | null;
  /** goes on from what the other kept, with this in the fields */
  readonly goOn: (value: T) => void;
}

/** What is typed over something that is kept whole; where another is kept meanwhile, both stay in hand. */
export function useGuardedDraft<T>(name: string, kept: Kept<T>): GuardedDraft<T> {
  const draft = useDraft<T>(name, kept.value, kept.version);
  const { value, set, done, isDirty, begun, rebase } = draft;
  const isOther =
    isDirty &&
    begun.version !== String(kept.version) &&
    // the same again under another version is no other: what was typed still holds against it
    !isSame(kept.newest ?? kept.value, kept.newest === undefined ? begun.value : value);
  return {
    value,
    set,
    done,
    isDirty,
    base: begun.value,
    basedOn: isOther ? begun.version : String(kept.version),
    other: isOther ? (kept.newest ?? kept.value) : null,
    goOn(next) {
      set(next);
      rebase();
    },
  };
}

export const isStale = (failure: unknown): boolean => failure instanceof Failure && failure.code === "stale";

/** Sends; where another was kept meanwhile, reads what is there, so that the page can show both, and says so. */
export async function sendOrRead<A>(send: () => Promise<A>, readAgain: () => Promise<unknown>): Promise<A> {
  try {
    return await send();
  } catch (failure) {
    if (isStale(failure)) await readAgain();
    throw failure;
  }
}
