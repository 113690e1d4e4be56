import type { Database } from "../store/types.ts";
import type { JobHandlers } from "./handlers.ts";

/** Seconds for which a job is taken: longer than any handler needs. */
export const LEASE_SECONDS = 300;

export interface JobsRun {
  readonly done: number;
  readonly failed: number;
}

/** Takes what is due, once, one after the other. A kind without a handler fails like any other, so that it is seen. */
export async function runDueJobs(
  database: Database,
  handlers: JobHandlers,
  {
    most = 20,
    isStopping = () => false,
  }: { readonly most?: number; readonly isStopping?: () => boolean } = {},
): Promise<JobsRun> {
  let done = 0;
  let failed = 0;
  for (let n = 0; n < most && !isStopping(); n++) {
    // one at a time, so that the lease covers one job only
    const [job] = await database.system.jobs.claim(1, LEASE_SECONDS);
    if (job === undefined) break;
    try {
      const handler = Object.hasOwn(handlers, job.kind) ? handlers[job.kind] : undefined;
      if (handler === undefined) throw new Error(`no handler for jobs of kind ${job.kind}`);
      await handler(job, database.storeFor({ firmId: job.firmId, depotId: job.depotId }), isStopping);
      await database.system.jobs.finish(job.id);
      done += 1;
    } catch (error) {
      await database.system.jobs.fail(job.id, error instanceof Error ? error.message : String(error));
      failed += 1;
    }
  }
  return { done, failed };
}

export interface JobWorker {
  /** Waits for the job in hand, which hears of it; nothing is begun after. */
  stop(): Promise<void>;
}

/** Runs due jobs every `everyMs` until stopped; never two rounds at once. `onError` hears what the store itself throws. */
export function startJobs(
  database: Database,
  handlers: JobHandlers,
  onError: (error: unknown) => void,
  everyMs = 5000,
): JobWorker {
  let round: Promise<unknown> = Promise.resolve();
  let isRunning = false;
  let isStopping = false;
  const timer = setInterval(() => {
    if (isRunning) return;
    isRunning = true;
    round = runDueJobs(database, handlers, { isStopping: () => isStopping })
      .catch(onError)
      .finally(() => {
        isRunning = false;
      });
  }, everyMs);
  timer.unref();
  return {
    async stop() {
      isStopping = true;
      clearInterval(timer);
      await round;
    },
  };
}
