/** Starts a throw-away server on loopback; null where no PostgreSQL can be had. */
export function startPostgres(): Promise<{ readonly url: string; stop(): void } | null>;
