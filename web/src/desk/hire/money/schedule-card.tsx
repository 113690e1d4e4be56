import { useState } from "react";
import { Button, ScrollX } from "../../../parts/index.ts";
import { dateText, moneyText, t } from "../../../parts/words.ts";
import { PartsDialog } from "./parts-dialog.tsx";
import type { HireMoney } from "./use-money.ts";

interface ScheduleCardProps {
  readonly hireId: string;
  readonly money: HireMoney;
  /** parts may still be agreed */
  readonly canAgree: boolean;
}

function Part({ part }: { readonly part: HireMoney["instalments"][number] }) {
  return (
    <tr>
      <td>{t(`instalment.${part.what}`)}</td>
      <td className="nowrap">
        {dateText(part.dueOn, "short")}
        {part.overdueDays > 0 && (
          <div className="strip-say-trouble">{t("schedule.overdue", { days: part.overdueDays })}</div>
        )}
      </td>
      <td>{moneyText(part.amount)}</td>
      <td>{part.open.pence === 0 ? t("schedule.paid") : moneyText(part.open)}</td>
    </tr>
  );
}

/** When which part of the price is to be paid, and how long the holds on cards stand. */
export function ScheduleCard({ hireId, money, canAgree }: ScheduleCardProps) {
  const [isOpen, setOpen] = useState(false);
  if (money.instalments.length === 0) return null;
  return (
    <section className="card sheet" aria-labelledby="schedule-title">
      <div className="row spread">
        <h2 id="schedule-title">{t("schedule.title")}</h2>
        {canAgree && (
          <Button look="quiet" onPress={() => setOpen(true)}>
            {t("schedule.agree")}
          </Button>
        )}
      </div>
      <ScrollX label={t("schedule.title")}>
        <table className="dense amounts">
          <thead>
            <tr>
              <th>{t("schedule.part")}</th>
              <th>{t("schedule.dueOn")}</th>
              <th>{t("money.amount")}</th>
              <th>{t("schedule.open")}</th>
            </tr>
          </thead>
          <tbody>
            {money.instalments.map((part) => (
              <Part key={`${part.what} ${part.dueOn} ${part.amount.pence}`} part={part} />
            ))}
          </tbody>
        </table>
      </ScrollX>
      {money.holds.map((hold) => (
        <p key={hold.id} className={hold.state === "stands" ? "quiet" : "strip-say-trouble"}>
          {t(`hold.${hold.state}`, {
            money: hold.amount,
            standsTo: hold.standsTo,
            neededTo: hold.neededTo,
          })}
        </p>
      ))}
      {isOpen && <PartsDialog hireId={hireId} money={money} onClose={() => setOpen(false)} />}
    </section>
  );
}
