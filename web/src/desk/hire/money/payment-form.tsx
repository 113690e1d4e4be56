import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { useDraft } from "../../use-draft.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { newId } from "./use-money.ts";

type NewPayment = Schemas["NewPayment"];
const KINDS = [
  "payment",
  "depositHeld",
  "depositReleased",
  "depositCharged",
] as const satisfies readonly NewPayment["kind"][];
const METHODS = ["card", "transfer", "cash", "cardHold"] as const satisfies readonly NewPayment["method"][];

interface PaymentDraft {
  /** made once for this payment: sending twice records once */
  readonly id: string;
  readonly kind: NewPayment["kind"];
  readonly method: NewPayment["method"];
  readonly pounds: number | null;
  readonly on: string;
  readonly note: string;
}

/** What to record next: what is owed, else the deposit that is not held yet. */
function suggest({ money }: PartProps["page"], today: string, id: string): PaymentDraft {
  const base = { id, on: today, note: "" };
  if (money === undefined) return { ...base, kind: "payment", method: "card", pounds: null };
  const { owed, depositDue, depositHeld } = money;
  const hold = depositDue.pence - depositHeld.pence;
  if (owed.pence > 0) return { ...base, kind: "payment", method: "card", pounds: owed.pence / 100 };
  return { ...base, kind: "depositHeld", method: "cardHold", pounds: hold > 0 ? hold / 100 : null };
}

/** A payment recorded by hand. */
export function PaymentForm({ page }: PartProps) {
  const { id } = page.hire;
  const { today } = useSignedIn();
  const [paymentId, setPaymentId] = useState(newId);
  const draft = useDraft<PaymentDraft>(`payment.${id}`, suggest(page, today, paymentId));
  const { value, set } = draft;
  const save = useHireAct(
    () =>
      take(
        client.POST("/api/hires/{id}/payments", {
          params: { path: { id } },
          body: {
            id: value.id,
            kind: value.kind,
            method: value.method,
            on: value.on,
            pence: Math.round((value.pounds ?? 0) * 100),
            ...(value.note.trim() === "" ? {} : { note: value.note.trim() }),
          },
        }),
      ),
    () => {
      draft.done();
      setPaymentId(newId());
    },
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <form className="stack" onSubmit={send} noValidate>
      <h3>{t("money.record")}</h3>
      <div className="sheet-fields">
        <SelectField
          label={t("money.kind")}
          value={value.kind}
          options={KINDS.map((kind) => ({ value: kind, label: t(`payment.${kind}`) }))}
          onChange={(kind) => set({ ...value, kind })}
        />
        <NumberField
          label={t("money.amount")}
          unit="£"
          min={0.01}
          max={50_000}
          format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
          value={value.pounds}
          onChange={(pounds) => set({ ...value, pounds })}
          error={problemAt(save.error, "pence")}
        />
        <SelectField
          label={t("money.method")}
          value={value.method}
          options={METHODS.map((method) => ({ value: method, label: t(`method.${method}`) }))}
          onChange={(method) => set({ ...value, method })}
        />
        <DateField
          label={t("money.on")}
          value={value.on}
          onChange={(on) => set({ ...value, on })}
          error={problemAt(save.error, "on")}
        />
        <TextField
          label={t("money.note")}
          value={value.note}
          onChange={(note) => set({ ...value, note })}
          error={problemAt(save.error, "note")}
        />
      </div>
      <FailureNote failure={save.error} shown={["pence", "on", "note"]} />
      <div>
        <Button type="submit" isPending={save.isPending} isDisabled={value.pounds === null}>
          {t(save.isPending ? "desk.sending" : "money.recordAct")}
        </Button>
      </div>
    </form>
  );
}
