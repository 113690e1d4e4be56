import type { DeviceDatabase } from "./database.ts";

export interface OutboxCount {
  /** records and photographs that the server does not have yet */
  readonly waiting: number;
  readonly refused: number;
}

export async function countOutbox(db: DeviceDatabase): Promise<OutboxCount> {
  const of = async (state: string): Promise<number> =>
    (await db.records.where("state").equals(state).count()) +
    (await db.photographs.where("state").equals(state).count());
  return { waiting: await of("waiting"), refused: await of("refused") };
}
