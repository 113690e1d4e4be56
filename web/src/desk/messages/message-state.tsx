import type { Schemas } from "../../api/client.ts";
import { PlainPill } from "../../parts/index.ts";
import { dateText, has, say, t } from "../../parts/words.ts";

type Message = Schemas["Message"];

/** Why a message was not sent, in words. */
export function reasonText({ reason, reasonCode }: Pick<Message, "reason" | "reasonCode">): string {
  if (reasonCode === null) return reason ?? "";
  const id = `message.reason.${reasonCode}`;
  return has(id) ? say(id) : reasonCode;
}

/** What became of a message: the state in a word, with its reason and its moment. */
export function MessageState({ message }: { readonly message: Message }) {
  const { state, attempts } = message;
  const reason = reasonText(message);
  return (
    <>
      <PlainPill>{t("messages.state", { state })}</PlainPill>
      {reason !== "" && <div className="quiet">{reason}</div>}
      {state === "unsure" && <div className="quiet">{t("messages.unsureNote")}</div>}
      {state === "waiting" && attempts > 0 && (
        <div className="quiet">{t("messages.nextTry", { attempts })}</div>
      )}
    </>
  );
}

export const whenText = ({ sentAt, dueAt }: Pick<Message, "sentAt" | "dueAt">): string =>
  sentAt === null
    ? t("messages.dueAt", { at: dateText(dueAt, "fullTime") })
    : t("messages.sentAt", { at: dateText(sentAt, "fullTime") });
