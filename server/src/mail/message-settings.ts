import { BadInput } from "@setfair/engine";
import * as z from "zod";
import { MESSAGE_KINDS, type MessageKind } from "../store/message-types.ts";
import type { Store } from "../store/types.ts";
import { checkHeaderText, checkMailAddress } from "./addresses.ts";

const documentSchema = z.object({
  fromName: z.string(),
  fromAddress: z.string(),
  replyTo: z.string(),
  /** the instant from which each is sent by itself; what should have gone before it never is */
  since: z.partialRecord(z.enum(MESSAGE_KINDS), z.string()),
});
const NOTHING = { fromName: "", fromAddress: "", replyTo: "", since: {} } as const;

/** How a depot writes to its hirers. Nothing goes out by itself until a person turned it on. */
export interface MessageSettings {
  readonly fromName: string;
  /** "" until it is set */
  readonly fromAddress: string;
  readonly replyTo: string;
  readonly since: Readonly<Partial<Record<MessageKind, string>>>;
}
export interface AskedSettings {
  readonly fromName: string;
  readonly fromAddress: string;
  readonly replyTo: string;
  readonly automatic: readonly MessageKind[];
}

export async function readSettings(
  store: Store,
): Promise<{ readonly settings: MessageSettings; readonly version: number }> {
  const { document, version } = await store.messages.settings();
  const { since, ...rest } = documentSchema.parse({ ...NOTHING, ...document });
  const turnedOn: Partial<Record<MessageKind, string>> = {};
  for (const kind of MESSAGE_KINDS) {
    const at = since[kind];
    if (at !== undefined) turnedOn[kind] = at;
  }
  return { settings: { ...rest, since: turnedOn }, version };
}

/** Checks what was asked for; a kind that was on stays on since then. @throws BadInput naming the field */
export function changeSettings(before: MessageSettings, asked: AskedSettings, now: string): MessageSettings {
  if (asked.automatic.length > 0 && asked.fromAddress.trim() === "")
    throw new BadInput([
      { path: "fromAddress", expected: "a sender's address before anything is sent by itself" },
    ]);
  return {
    fromName: checkHeaderText(asked.fromName, "fromName"),
    fromAddress: asked.fromAddress.trim() === "" ? "" : checkMailAddress(asked.fromAddress, "fromAddress"),
    replyTo: asked.replyTo.trim() === "" ? "" : checkMailAddress(asked.replyTo, "replyTo"),
    since: Object.fromEntries(asked.automatic.map((kind) => [kind, before.since[kind] ?? now])),
  };
}
