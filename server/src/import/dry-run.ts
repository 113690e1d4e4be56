import type { Store } from "../store/types.ts";

/** Carries the answer out of a transaction that is undone. */
class Undone extends Error {
  readonly answer: unknown;
  constructor(answer: unknown) {
    super("a dry run is undone");
    this.answer = answer;
  }
}

/**
 * Does the work in one transaction, and undoes all of it where `isDry`: what would happen is found out by letting
 * it happen, so that the dry run and the real one cannot differ.
 */
export async function runOrUndo<T>(
  store: Store,
  isDry: boolean,
  work: (store: Store) => Promise<T>,
): Promise<T> {
  if (!isDry) return store.within(work);
  try {
    return await store.within<T>(async (inner) => {
      throw new Undone(await work(inner));
    });
  } catch (error) {
    if (error instanceof Undone) return error.answer as T; // made by the work above
    throw error;
  }
}
