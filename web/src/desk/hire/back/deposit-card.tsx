import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { dateText, moneyText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { RefundDialog } from "../money/refund-dialog.tsx";
import { useMoney } from "../money/use-money.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { AskDialog } from "./ask-dialog.tsx";
import { resultOf, type SettlementState, useSettlement } from "./use-settlement.ts";

/** What goes back and when, what is held and why, what is to be paid back; then the end of the hire. */
export function DepositCard({ page }: PartProps) {
  const settlement = useSettlement(page.hire.id);
  const state = settlement.data;
  if (state === undefined || state.frozenAt === null) return null;
  const isSettled = page.hire.stage === "settled";
  return (
    <section className="card stack-tight" aria-labelledby="deposit-title">
      <h2 id="deposit-title">{t("settling.deposit.title")}</h2>
      <p>
        {state.releasedAt === null
          ? t("settlement.releaseBy", { on: dateText(state.releaseBy, "full") })
          : t("settling.deposit.released", { at: dateText(state.releasedAt, "fullTime") })}
      </p>
      {state.lowered.pence > 0 && <p>{t("settling.deposit.lowered", { money: moneyText(state.lowered) })}</p>}
      <Held hireId={page.hire.id} state={state} />
      <PayBack hireId={page.hire.id} state={state} />
      {isSettled && <Release page={page} state={state} />}
    </section>
  );
}

interface PieceProps {
  readonly hireId: string;
  readonly state: SettlementState;
}

/** The part that is held for what is disputed or not known yet, with the day by which the hirer has an answer. */
function Held({ hireId, state }: PieceProps) {
  const { today } = useSignedIn();
  const [isOpen, setOpen] = useState(false);
  const { depositWithheld } = resultOf(state);
  if (depositWithheld.pence === 0) return null;
  const { promisedOn } = state;
  return (
    <div className="conditions held">
      <p>
        <strong>{t("settling.deposit.held", { money: moneyText(depositWithheld) })}</strong>{" "}
        {promisedOn === null
          ? t("settling.deposit.noPromise")
          : t(promisedOn < today ? "settling.deposit.promiseOver" : "settling.deposit.promised", {
              on: dateText(promisedOn, "full"),
            })}
      </p>
      <Button onPress={() => setOpen(true)}>
        {t(promisedOn === null ? "settling.hold.open" : "settling.hold.again")}
      </Button>
      {isOpen && (
        <AskDialog
          hireId={hireId}
          draft="hold"
          title={t("settling.hold.title")}
          lead={t("settling.hold.lead")}
          fields={[
            { id: "promisedOn", kind: "date", label: t("settling.field.promisedOn") },
            { id: "reason", kind: "text", label: t("settling.field.reason") },
          ]}
          act={t("settling.hold.send")}
          send={(entered) =>
            take(
              client.POST("/api/hires/{id}/settlement/hold", {
                params: { path: { id: hireId } },
                body: { promisedOn: entered.text("promisedOn"), reason: entered.text("reason") },
              }),
            )
          }
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}

/** What was paid or kept beyond what is due now: it goes back by the way it came. */
function PayBack({ hireId, state }: PieceProps) {
  const [isOpen, setOpen] = useState(false);
  const money = useMoney(hireId);
  if (state.refundDue.pence === 0) return null;
  return (
    <div className="conditions held">
      <p>
        <strong>{t("settling.refund.due", { money: moneyText(state.refundDue) })}</strong>{" "}
        {t("settling.refund.why")}
      </p>
      <Button look="main" isDisabled={money.data === undefined} onPress={() => setOpen(true)}>
        {t("settling.refund.open", { money: moneyText(state.refundDue) })}
      </Button>
      {isOpen && money.data !== undefined && (
        <RefundDialog hireId={hireId} money={money.data} onClose={() => setOpen(false)} />
      )}
    </div>
  );
}

function Release({ page, state }: PartProps & { readonly state: SettlementState }) {
  const { id } = page.hire;
  const path = { params: { path: { id } } };
  const release = useHireAct(() => take(client.POST("/api/hires/{id}/deposit-release", path)));
  const close = useHireAct(() => take(client.POST("/api/hires/{id}/close", path)));
  const isDue = state.releasedAt === null || state.toKeep.pence + state.toGiveBack.pence > 0;
  return (
    <>
      {isDue && (
        <p>
          {t("settling.deposit.now", {
            keep: moneyText(state.toKeep),
            back: moneyText(state.toGiveBack),
          })}
        </p>
      )}
      <FailureNote failure={release.error ?? close.error} />
      <div className="row">
        {isDue && (
          <Button look="main" onPress={() => release.mutate()} isPending={release.isPending}>
            {t("settlement.release")}
          </Button>
        )}
        <Button onPress={() => close.mutate()} isPending={close.isPending}>
          {t("settlement.close")}
        </Button>
      </div>
    </>
  );
}
