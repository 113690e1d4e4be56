import type { FormEvent } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, Dialog, NumberField } from "../../../parts/index.ts";
import { moneyText, t } from "../../../parts/words.ts";
import { DropDraft } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";
import { replaced } from "../../replaced.ts";
import { type HireMoney, useMoneyAct } from "./use-money.ts";

interface Row {
  readonly dueOn: string;
  /** null while nothing is entered */
  readonly pence: number | null;
}
interface Parts {
  readonly agreed: readonly Row[];
}

const MOST_PARTS = 12;

function firstRows({ agreed, instalments }: HireMoney): readonly Row[] {
  if (agreed.length > 0) return agreed;
  return instalments
    .filter(({ what }) => what !== "charges")
    .map(({ dueOn, amount }) => ({ dueOn, pence: amount.pence }));
}

interface PartsDialogProps {
  readonly hireId: string;
  readonly money: HireMoney;
  readonly onClose: () => void;
}

/** Parts with their days, which must sum to the price. */
export function PartsDialog({ hireId, money, onClose }: PartsDialogProps) {
  const draft = useGuardedDraft<Parts>(`parts.${hireId}`, {
    value: { agreed: firstRows(money) },
    version: money.agreedVersion,
  });
  const { basedOn } = draft;
  const rows = draft.value.agreed;
  const setRows = (agreed: readonly Row[]) => draft.set({ agreed });
  const save = useMoneyAct(
    hireId,
    (agreed: { dueOn: string; pence: number }[]) =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/money/parts", {
              params: { path: { id: hireId }, query: { basedOn } },
              body: { agreed },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["hireMoney", hireId] }),
      ),
    () => {
      draft.done();
      onClose();
    },
  );
  const set = (k: number, row: Row, change: Partial<Row>) =>
    setRows(replaced(rows, k, { ...row, ...change }));
  const rest = money.price.pence - rows.reduce((sum, { pence }) => sum + (pence ?? 0), 0);
  const add = () => setRows([...rows, { dueOn: rows.at(-1)?.dueOn ?? "", pence: rest > 0 ? rest : null }]);
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(rows.map(({ dueOn, pence }) => ({ dueOn, pence: pence ?? 0 })));
  };
  return (
    <Dialog title={t("schedule.agreeTitle")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <p>{t("schedule.agreeLead", { price: money.price })}</p>
        {rows.map((row, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a part has nothing of its own but its place
          <fieldset key={k} className="sheet-fields money-part-row">
            <legend>{t("schedule.nth", { n: k + 1 })}</legend>
            <DateField
              label={t("schedule.dueOn")}
              value={row.dueOn}
              onChange={(dueOn) => set(k, row, { dueOn })}
              error={problemAt(save.error, `agreed.${k}.dueOn`)}
            />
            <NumberField
              label={t("money.amount")}
              unit="£"
              min={0.01}
              max={50_000}
              format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
              value={row.pence === null ? null : row.pence / 100}
              onChange={(pounds) => set(k, row, { pence: pounds === null ? null : Math.round(pounds * 100) })}
              error={problemAt(save.error, `agreed.${k}.pence`)}
            />
            <Button look="quiet" onPress={() => setRows(replaced(rows, k, null))}>
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
        <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
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
          <DropDraft draft={draft} />
        </div>
      </form>
    </Dialog>
  );
}
