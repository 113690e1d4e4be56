import { useState } from "react";
import { Button, ScrollX } from "../../../parts/index.ts";
import { dateText, moneyText, say, t } from "../../../parts/words.ts";
import { ChargeDialog } from "./charge-dialog.tsx";
import { RefundDialog } from "./refund-dialog.tsx";
import { UndoDialog } from "./undo-dialog.tsx";
import type { HireMoney } from "./use-money.ts";

type Entry = HireMoney["entries"][number];

interface RowProps {
  readonly entry: Entry;
  readonly onUndo: (() => void) | null;
}

function Row({ entry, onUndo }: RowProps) {
  return (
    <tr className={entry.undoneBy === null ? undefined : "quiet"}>
      <td className="nowrap">{dateText(entry.on, "short")}</td>
      <td>
        {t(`payment.${entry.kind}`)}
        {entry.note !== null && <span className="quiet"> {entry.note}</span>}
        {entry.undoneBy !== null && <div className="quiet">{t("ledger.undone")}</div>}
      </td>
      <td>{say(`method.${entry.method}`)}</td>
      <td>{entry.by}</td>
      <td>{moneyText(entry.amount)}</td>
      <td>
        {onUndo !== null && (
          <Button
            look="quiet"
            onPress={onUndo}
            aria-label={t("ledger.undoOf", {
              kind: t(`payment.${entry.kind}`),
              money: entry.amount,
              on: dateText(entry.on, "short"),
            })}
          >
            {t("ledger.undo")}
          </Button>
        )}
      </td>
    </tr>
  );
}

interface LedgerCardProps {
  readonly hireId: string;
  readonly money: HireMoney;
}

/** Every entry of the ledger, oldest first. Nothing is changed here: what is wrong is undone by another entry. */
export function LedgerCard({ hireId, money }: LedgerCardProps) {
  const [asked, setAsked] = useState<"refund" | "charge" | Entry | null>(null);
  const close = () => setAsked(null);
  const canUndo = new Map(money.undoable.map(({ id, failed }) => [id, failed]));
  return (
    <section className="card sheet" aria-labelledby="ledger-title">
      <div className="row spread">
        <h2 id="ledger-title">{t("ledger.title")}</h2>
        <div className="row">
          <Button onPress={() => setAsked("refund")} isDisabled={money.refundable.length === 0}>
            {t("refund.open")}
          </Button>
          <Button onPress={() => setAsked("charge")}>{t("charge.open")}</Button>
        </div>
      </div>
      {money.entries.length === 0 ? (
        <p className="quiet">{t("ledger.none")}</p>
      ) : (
        <ScrollX label={t("ledger.title")}>
          <table className="dense ledger">
            <thead>
              <tr>
                <th>{t("money.when")}</th>
                <th>{t("money.kind")}</th>
                <th>{t("money.method")}</th>
                <th>{t("money.by")}</th>
                <th>{t("money.amount")}</th>
                <th>{t("ledger.undoHead")}</th>
              </tr>
            </thead>
            <tbody>
              {money.entries.map((entry) => (
                <Row
                  key={entry.id}
                  entry={entry}
                  onUndo={canUndo.has(entry.id) ? () => setAsked(entry) : null}
                />
              ))}
            </tbody>
          </table>
        </ScrollX>
      )}
      {asked === "refund" && <RefundDialog hireId={hireId} money={money} onClose={close} />}
      {asked === "charge" && <ChargeDialog hireId={hireId} onClose={close} />}
      {asked !== null && typeof asked === "object" && (
        <UndoDialog hireId={hireId} entry={asked} mayFail={canUndo.get(asked.id) === true} onClose={close} />
      )}
    </section>
  );
}
