import { readHireData } from "../desk/hire-data.ts";
import type { MessageKind } from "../store/message-types.ts";
import type { Store } from "../store/types.ts";
import { type ComposedMessage, composeMessage } from "./compose-message.ts";

/** One message of a hire in English with the hire's own facts, written nowhere. */
export async function composeFor(
  store: Store,
  { hireId, kind, now }: { readonly hireId: string; readonly kind: MessageKind; readonly now: Date },
): Promise<ComposedMessage> {
  const asked = { kind, language: "en", goesAt: now.toISOString() } as const;
  return composeMessage(store, await readHireData(store, hireId, now), asked);
}
