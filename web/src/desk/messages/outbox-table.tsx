import { useState } from "react";
import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { Button, ScrollX } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfHire } from "../where.ts";
import { MessageDialog } from "./message-dialog.tsx";
import { MessageState, whenText } from "./message-state.tsx";

type Message = Schemas["Message"];

/** Messages, newest first, each to be opened. */
export function OutboxTable({ messages }: { readonly messages: readonly Message[] }) {
  const [open, setOpen] = useState<Message | null>(null);
  return (
    <>
      <ScrollX label={t("messages.title")}>
        <table className="dense">
          <thead>
            <tr>
              <th>{t("messages.what")}</th>
              <th>{t("messages.who")}</th>
              <th>{t("messages.when")}</th>
              <th>{t("messages.stateHead")}</th>
              <th>{t("messages.read")}</th>
            </tr>
          </thead>
          <tbody>
            {messages.map((message) => (
              <tr key={message.id}>
                <td>
                  {t("message.kind", { kind: message.kind })}
                  {message.language !== "en" && (
                    <div className="quiet">{t("messages.lang", { language: message.language })}</div>
                  )}
                </td>
                <td>
                  <Link href={placeOfHire(message.hireId)} className="link-row">
                    {message.customer === "" ? message.reference : message.customer}
                  </Link>
                  <div className="quiet">{message.to}</div>
                </td>
                <td className="num nowrap">{whenText(message)}</td>
                <td>
                  <MessageState message={message} />
                </td>
                <td className="message-acts">
                  <Button
                    look="quiet"
                    onPress={() => setOpen(message)}
                    aria-label={`${t("messages.read")}: ${message.subject}`}
                  >
                    {t("messages.read")}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollX>
      {open !== null && <MessageDialog message={open} onClose={() => setOpen(null)} />}
    </>
  );
}

/** What is written by itself in the next days. */
export function PlannedList({ planned }: { readonly planned: Schemas["Outbox"]["planned"] }) {
  return (
    <ul className="stack-tight">
      {planned.map(({ hireId, kind, customer, reference, dueAt }) => (
        <li key={`${hireId} ${kind}`} className="row">
          <span className="num">{dateText(dueAt, "fullTime")}</span>
          <span>{t("message.kind", { kind })}</span>
          <Link href={`/messages/hire/${encodeURIComponent(hireId)}`} className="link-row">
            {customer} {reference}
          </Link>
        </li>
      ))}
    </ul>
  );
}
