import { makeRecord } from "@setfair/records";
import { Refusal } from "../api/refusal.ts";
import type { FrozenRow, JsonObject, Store } from "../store/types.ts";
import { ENGINE_VERSION } from "./version.ts";

export interface ToFreeze {
  readonly hireId: string;
  /** what gave the result: "quote", "glass", "load", "forecast", "briefing", "settlement", "cancellation", "vehicle" */
  readonly room: string;
  /** as it was shown, with the `versions` that it rests on */
  readonly document: JsonObject;
  /** account that it is for */
  readonly by: string;
  /** instant, ISO 8601 UTC */
  readonly at: string;
}

/**
 * Keeps a result as it was shown when someone signed, accepted or paid on it, and writes its hash into the depot's
 * records, so that the chain of receipts holds it too. To be called inside a transaction: both are kept or neither.
 * @throws Refusal `recordConflict` where the account's chain moved on meanwhile
 */
export async function freeze(store: Store, { hireId, room, document, by, at }: ToFreeze): Promise<FrozenRow> {
  const frozen = await store.frozen.add({ hireId, room, document, by });
  const chain = `${hireId}.frozen`;
  const deviceId = `desk.${by}`;
  const own = (await store.records.list({ hireId, chain })).filter(
    ({ record }) => record.deviceId === deviceId,
  );
  const record = makeRecord(
    {
      deviceId,
      deviceTime: at,
      kind: "frozen",
      refs: { hireId, accountId: by },
      chain,
      content: {
        room,
        result: { frozenId: frozen.id, hash: frozen.hash },
        inputs: {},
        versions: versionsIn(document),
      },
    },
    own.at(-1)?.record ?? null,
  );
  const [answer] = await store.records.append([record]);
  if (answer?.ok !== true) throw new Refusal("recordConflict");
  return frozen;
}

function versionsIn({ versions }: JsonObject) {
  const named = (versions ?? {}) as Readonly<Record<string, unknown>>;
  const textOf = (value: unknown): string | null =>
    typeof value === "string" && value !== "" ? value : null;
  return {
    vehicle: textOf(named.vehicle),
    rules: textOf(named.rules),
    terms: textOf(named.terms),
    engine: textOf(named.engine) ?? ENGINE_VERSION,
  };
}
