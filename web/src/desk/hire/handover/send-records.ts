import { type ChainEnd, type DepotRecord, makeRecord, type NewRecord } from "@setfair/records";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import type { Stroke } from "../../../parts/index.ts";
import { words } from "../../../parts/words.ts";
import { newUuid } from "../../messages/new-uuid.ts";

const KEY = "setfair.deskDevice";

/** The id of this desk's device: made once; says nothing about a person. */
export function deviceId(): string {
  const kept = localStorage.getItem(KEY);
  if (kept !== null) return kept;
  const made = Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");
  localStorage.setItem(KEY, made);
  return made;
}

type Step = Pick<NewRecord, "kind" | "content">;
export interface Signing {
  readonly hireId: string;
  readonly vehicleId: string | null;
  readonly purpose: string;
  readonly signer: string;
  /** the text as it was shown to whoever signs */
  readonly shown: string;
  readonly strokes: readonly Stroke[];
  /** what is signed for: each becomes a record that the signature covers */
  readonly items: readonly Step[];
}

type Refs = Pick<Signing, "hireId" | "vehicleId"> | { readonly hireId: null; readonly vehicleId: string };

/** One chain of this device, each step after the one before. */
function chainOf(refs: Refs, device: string, now: string) {
  const chain = `desk.${newUuid()}`;
  const about = {
    ...(refs.hireId === null ? {} : { hireId: refs.hireId }),
    ...(refs.vehicleId === null ? {} : { vehicleId: refs.vehicleId }),
  };
  const made: DepotRecord[] = [];
  const add = (step: Step) => {
    const last = made.at(-1);
    const after: ChainEnd = last === undefined ? null : { seq: last.seq, hash: last.hash };
    made.push(makeRecord({ ...step, deviceId: device, deviceTime: now, refs: about, chain }, after));
  };
  return { made, add };
}

/** Appends what the desk wrote down about a hire or a vehicle; records are never changed. */
export async function sendSteps(refs: Refs, steps: readonly Step[]): Promise<void> {
  const { made, add } = chainOf(refs, deviceId(), new Date().toISOString());
  for (const step of steps) add(step);
  await send(made);
}

async function send(records: readonly DepotRecord[]): Promise<void> {
  await take(client.POST("/api/records", { body: { records: records.map((record) => ({ ...record })) } }));
}

/** One chain of this device: the items, then the signature over them. */
export function signingRecords(signing: Signing, device: string, now: string): readonly DepotRecord[] {
  const { made, add } = chainOf(signing, device, now);
  for (const item of signing.items) add(item);
  add({
    kind: "signature",
    content: {
      records: made.map(({ id, hash }) => ({ id, hash })),
      signer: { name: signing.signer },
      role: "hirer",
      purpose: signing.purpose,
      shown: { text: signing.shown, language: words().locale },
      strokes: signing.strokes.map((stroke) => stroke.map((point) => ({ ...point }))),
    },
  });
  return made;
}

/** Signs and sends; the records are appended and never changed. */
export async function sendSigning(signing: Signing): Promise<void> {
  await send(signingRecords(signing, deviceId(), new Date().toISOString()));
}
