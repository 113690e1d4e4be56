import { LEARN_USE, learnFromReturns } from "../desk/use/learn-from-returns.ts";
import { ERASE_LICENCES } from "../store/licences-store.ts";
import type { JobRow, Store } from "../store/types.ts";

/**
 * Does a job. It may be begun more than once, so doing it twice must come to the same; a thrown error tries it
 * again later. `store` is the depot's own. Long work ends early once `isStopping`, and leaves the rest as a job.
 */
export type JobHandler = (job: JobRow, store: Store, isStopping: () => boolean) => Promise<void>;
export type JobHandlers = Readonly<Record<string, JobHandler>>;

/** The store's own jobs; mail and others are added by whoever starts the worker. */
export const storeJobs: JobHandlers = {
  // well within the lease of a job; what is left waits for the next
  [LEARN_USE]: async (_job, store, isStopping) => {
    const left = await learnFromReturns(store, 60_000, isStopping);
    if (left > 0) await store.jobs.add({ kind: LEARN_USE, payload: {} });
  },
  [ERASE_LICENCES]: async (_job, store) => {
    await store.licences.eraseDue();
  },
};
