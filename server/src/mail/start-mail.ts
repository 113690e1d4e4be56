import type { Database } from "../store/types.ts";
import { planMessages } from "./plan-messages.ts";
import { takeBounces } from "./take-bounces.ts";

export interface MailClock {
  stop(): Promise<void>;
}

export interface MailOptions {
  readonly hasServer: boolean;
  /** Maildir folder into which a mail server puts what came back; null where nobody set one */
  readonly bounceFolder: string | null;
  readonly now: () => Date;
  readonly everyMs?: number;
}

/** Looks every minute, at every depot, what is due to be written. `onError` hears what went wrong; the next round goes on. */
export function startMail(
  database: Database,
  options: MailOptions,
  onError: (error: unknown) => void,
): MailClock {
  let round: Promise<unknown> = Promise.resolve();
  let isRunning = false;
  const look = async () => {
    for (const { firmId, id } of await database.system.depots())
      await planMessages(database.storeFor({ firmId, depotId: id }), options.now(), options.hasServer);
    if (options.bounceFolder !== null) await takeBounces(database, options.bounceFolder);
  };
  const timer = setInterval(() => {
    if (isRunning) return;
    isRunning = true;
    round = look()
      .catch(onError)
      .finally(() => {
        isRunning = false;
      });
  }, options.everyMs ?? 60_000);
  timer.unref();
  return {
    async stop() {
      clearInterval(timer);
      await round;
    },
  };
}
