import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, Dialog, NumberField } from "../../../parts/index.ts";
import { moneyText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type HireMoney, useMoneyAct } from "./use-money.ts";

interface Row {
  readonly key: number;
  readonly dueOn: string;
  readonly pounds: number | null;
}

const MOST_PARTS = 12;

function firstRows({ agreed, instalments }: HireMoney): readonly Row[] {
  const parts =
    agreed.length > 0
      ? agreed
      : instalments
          .filter(({ what }) => what !== "charges")
          .map(({ dueOn, amount }) => ({ dueOn, pence: amount.pence }));
  return parts.map(({ dueOn, pence }, key) => ({ key, dueOn, pounds: pence / 100 }));
}

const penceOf = ({ pounds }: Row): number => Math.round((pounds ?? 0) * 100);

interface PartsDialogProps {
  readonly hireId: string;
  readonly money: HireMoney;
  readonly onClose: () => void;
}

/** Parts with their days, which must sum to the price. */
export function PartsDialog({ hireId, money, onClose }: PartsDialogProps) {
  const [rows, setRows] = useState<readonly Row[]>(() => firstRows(money));
  const save = useMoneyAct(
    hireId,
    (agreed: { dueOn: string; pence: number }[]) =>
      take(client.PUT("/api/hires/{id}/money/parts", { params: { path: { id: hireId } }, body: { agreed } })),
    onClose,
  );
  const set = (key: number, change: Partial<Row>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...change } : row)));
  const rest = money.price.pence - rows.reduce((sum, row) => sum + penceOf(row), 0);
  const add = () => {
    const key = Math.max(-1, ...rows.map((row) => row.key)) + 1;
    setRows([...rows, { key, dueOn: rows.at(-1)?.dueOn ?? "", pounds: rest > 0 ? rest / 100 : null }]);
  };
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(rows.map((row) => ({ dueOn: row.dueOn, pence: penceOf(row) })));
  };
  return (
    <Dialog title={t("schedule.agreeTitle")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <p>{t("schedule.agreeLead", { price: money.price })}</p>
        {rows.map((row, k) => (
          <fieldset key={row.key} className="sheet-fields money-part-row">
            <legend>{t("schedule.nth", { n: k + 1 })}</legend>
            <DateField
              label={t("schedule.dueOn")}
              value={row.dueOn}
              onChange={(dueOn) => set(row.key, { dueOn })}
              error={problemAt(save.error, `agreed.${k}.dueOn`)}
            />
            <NumberField
              label={t("money.amount")}
              unit="£"
              min={0.01}
              max={50_000}
              format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
              value={row.pounds}
              onChange={(pounds) => set(row.key, { pounds })}
              error={problemAt(save.error, `agreed.${k}.pence`)}
            />
            <Button look="quiet" onPress={() => setRows(rows.filter(({ key }) => key !== row.key))}>
              {t("schedule.leaveOut", { n: k + 1 })}
            </Button>
          </fieldset>
        ))}
        {rest !== 0 && (
          <p className="strip-say-trouble" role="status">
            {t(rest > 0 ? "schedule.rest" : "schedule.tooMuch", {
              money: moneyText({ currency: "GBP", pence: Math.abs(rest) }),
            })}
          </p>
        )}
        <FailureNote failure={save.error} shown={[]} />
        <div className="row">
          <Button onPress={add} isDisabled={rows.length >= MOST_PARTS}>
            {t("schedule.add")}
          </Button>
          <Button look="quiet" onPress={() => save.mutate([])} isPending={save.isPending}>
            {t("schedule.asTerms")}
          </Button>
          <Button
            type="submit"
            look="main"
            isPending={save.isPending}
            isDisabled={rest !== 0 || rows.length === 0}
          >
            {t("schedule.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
