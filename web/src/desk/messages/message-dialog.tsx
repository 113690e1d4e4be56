import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Dialog, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { MessageState, whenText } from "./message-state.tsx";
import { PaperLinks } from "./paper-links.tsx";

type Message = Schemas["Message"];
type Act = "again" | "withdraw" | "bounced";

const AGAIN: readonly Message["state"][] = ["failed", "bounced", "unsure"];

function useMessageAct(id: string, done: () => void) {
  return useMutation({
    mutationFn: ({ act, why }: { readonly act: Act; readonly why: string }) => {
      const params = { path: { id } };
      if (act === "bounced")
        return take(client.POST("/api/messages/{id}/bounced", { params, body: { why } }));
      if (act === "withdraw") return take(client.POST("/api/messages/{id}/withdraw", { params }));
      return take(client.POST("/api/messages/{id}/again", { params }));
    },
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: ["messages"] });
      done();
    },
  });
}

/** One message, to be read, printed, tried again, withdrawn, or noted as come back. */
export function MessageDialog({
  message,
  onClose,
}: {
  readonly message: Message;
  readonly onClose: () => void;
}) {
  const { may } = useSignedIn();
  const [why, setWhy] = useState("");
  const send = useMessageAct(message.id, onClose);
  const { state } = message;
  const act = (name: Act) => () => send.mutate({ act: name, why });
  return (
    <Dialog title={t("message.kind", { kind: message.kind })} isOpen onClose={onClose} wide>
      <div className="stack message-print">
        <dl className="message-facts">
          <dt>{t("messages.to")}</dt>
          <dd>
            {message.customer} {message.to !== "" && `<${message.to}>`}
          </dd>
          <dt>{t("messages.subject")}</dt>
          <dd>{message.subject}</dd>
          <dt>{t("messages.when")}</dt>
          <dd>{whenText(message)}</dd>
          <dt>{t("messages.stateHead")}</dt>
          <dd>
            <MessageState message={message} />
            {message.response !== null && (
              <div className="quiet">{t("messages.response", { text: message.response })}</div>
            )}
          </dd>
        </dl>
        {message.language !== "en" && (
          <p>
            <strong>{t("messages.lang", { language: message.language })}</strong>
          </p>
        )}
        <section className="message-text" aria-label={t("messages.textLabel")} lang={message.language}>
          {message.body}
        </section>
        <PaperLinks hireId={message.hireId} papers={message.attachments} />
        <FailureNote failure={send.error} />
        <div className="row">
          <Button onPress={() => window.print()}>{t("messages.print")}</Button>
          {may.includes("customer.write") && AGAIN.includes(state) && (
            <Button look="main" onPress={act("again")} isPending={send.isPending}>
              {t(state === "failed" ? "messages.tryAgain" : "messages.sendAgain")}
            </Button>
          )}
          {may.includes("customer.write") && state === "waiting" && (
            <Button onPress={act("withdraw")} isPending={send.isPending}>
              {t("messages.withdraw")}
            </Button>
          )}
        </div>
        {may.includes("customer.write") && (state === "sent" || state === "unsure") && (
          <div className="row">
            <TextField label={t("messages.bouncedWhy")} value={why} onChange={setWhy} />
            <Button onPress={act("bounced")} isDisabled={why.trim() === ""} isPending={send.isPending}>
              {t("messages.bounced")}
            </Button>
          </div>
        )}
      </div>
    </Dialog>
  );
}
