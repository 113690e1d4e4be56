import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, Dialog, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { dateText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { type HireMoney, newId, useMoneyAct } from "./use-money.ts";

type Income = HireMoney["refundable"][number];

const incomeText = ({ method, on, amount, left, fromDeposit }: Income): string =>
  t("refund.from", {
    how: say(`method.${method}`),
    on: dateText(on, "short"),
    amount,
    left,
    deposit: fromDeposit ? "yes" : "no",
  });

/** Too much was paid: that much; else all that is left of the payment. */
const suggest = (owedPence: number, income: Income | undefined): number | null =>
  income === undefined
    ? null
    : (owedPence < 0 ? Math.min(-owedPence, income.left.pence) : income.left.pence) / 100;

interface RefundDialogProps {
  readonly hireId: string;
  readonly money: HireMoney;
  readonly onClose: () => void;
}

/** Pays back by the way the money came, and never more than came that way. */
export function RefundDialog({ hireId, money, onClose }: RefundDialogProps) {
  const { today } = useSignedIn();
  const [id] = useState(newId);
  const [of, setOf] = useState(money.refundable.at(-1)?.id ?? "");
  const chosen = money.refundable.find((income) => income.id === of);
  const [pounds, setPounds] = useState(() => suggest(money.owed.pence, chosen));
  const [on, setOn] = useState(today);
  const [reason, setReason] = useState("");
  const save = useMoneyAct(
    hireId,
    () =>
      take(
        client.POST("/api/hires/{id}/money/refunds", {
          params: { path: { id: hireId } },
          body: { id, of, pence: Math.round((pounds ?? 0) * 100), on, reason: reason.trim() },
        }),
      ),
    onClose,
  );
  const choose = (next: string) => {
    setOf(next);
    setPounds(
      suggest(
        money.owed.pence,
        money.refundable.find((income) => income.id === next),
      ),
    );
  };
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  return (
    <Dialog title={t("refund.title")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <p className="quiet">{t("refund.lead")}</p>
        <SelectField
          label={t("refund.of")}
          value={of}
          options={money.refundable.map((income) => ({ value: income.id, label: incomeText(income) }))}
          onChange={choose}
          error={problemAt(save.error, "of")}
        />
        <div className="sheet-fields">
          <NumberField
            label={t("money.amount")}
            unit="£"
            min={0.01}
            max={(chosen?.left.pence ?? 0) / 100}
            format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
            value={pounds}
            onChange={setPounds}
            error={problemAt(save.error, "pence")}
          />
          <DateField label={t("money.on")} value={on} onChange={setOn} error={problemAt(save.error, "on")} />
          <TextField
            label={t("refund.reason")}
            value={reason}
            onChange={setReason}
            error={problemAt(save.error, "reason")}
          />
        </div>
        <FailureNote failure={save.error} shown={["of", "pence", "on", "reason"]} />
        <div className="row row-end">
          <Button
            type="submit"
            look="main"
            isPending={save.isPending}
            isDisabled={pounds === null || reason.trim() === ""}
          >
            {t("refund.send")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
