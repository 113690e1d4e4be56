/** Runs work on one name at a time, in the order in which it came; different names do not wait for each other. */
export function makeQueues(): <T>(name: string, work: () => Promise<T>) => Promise<T> {
  const tails = new Map<string, Promise<unknown>>();
  return async (name, work) => {
    const before = tails.get(name) ?? Promise.resolve();
    const mine = before.then(work, work);
    // the queue goes on after a failure; whoever asked gets the error
    const tail = mine.then(
      () => undefined,
      () => undefined,
    );
    tails.set(name, tail);
    try {
      return await mine;
    } finally {
      if (tails.get(name) === tail) tails.delete(name);
    }
  };
}
