import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, ScrollX } from "../../../parts/index.ts";
import { dateText, moneyText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { PapersCard } from "../papers-card.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { EndHire } from "./end-hire.tsx";
import { PaymentForm } from "./payment-form.tsx";
import { QuoteCard } from "./quote-card.tsx";

/** What it costs, what was paid, what is held. */
export default function MoneyPart({ page }: PartProps) {
  return (
    <>
      <QuoteCard page={page} />
      <Book page={page} />
      <Paid page={page} />
      {page.quote !== null && <PapersCard hireId={page.hire.id} papers={["quote", "receipt"]} />}
      <EndHire page={page} />
    </>
  );
}

function Book({ page }: PartProps) {
  const { id, stage } = page.hire;
  const book = useHireAct(() => take(client.POST("/api/hires/{id}/book", { params: { path: { id } } })));
  if (stage !== "quote" || page.quote?.acceptedAt == null) return null;
  return (
    <section className="card stack-tight">
      <div className="row spread">
        <p>{t("money.readyToBook")}</p>
        <Button look="main" onPress={() => book.mutate()} isPending={book.isPending}>
          {t("money.book")}
        </Button>
      </div>
      <FailureNote failure={book.error} />
    </section>
  );
}

function Paid({ page }: PartProps) {
  const { money, payments } = page;
  return (
    <section className="card sheet" aria-labelledby="paid-title">
      <h2 id="paid-title">{t("money.title")}</h2>
      <dl className="sums">
        {(["price", "paid", "owed", "depositDue", "depositHeld"] as const).map((id) => (
          <div key={id}>
            <dt>{t(`money.${id}`)}</dt>
            <dd>{moneyText(money[id])}</dd>
          </div>
        ))}
      </dl>
      {payments.length > 0 && (
        <ScrollX label={t("money.title")}>
          <table className="dense amounts">
            <thead>
              <tr>
                <th>{t("money.when")}</th>
                <th>{t("money.kind")}</th>
                <th>{t("money.method")}</th>
                <th>{t("money.by")}</th>
                <th>{t("money.amount")}</th>
              </tr>
            </thead>
            <tbody>
              {payments.map((payment) => (
                <tr key={payment.id}>
                  <td className="nowrap">{dateText(payment.on, "short")}</td>
                  <td>
                    {t(`payment.${payment.kind}`)}
                    {payment.note !== null && <span className="quiet"> {payment.note}</span>}
                  </td>
                  <td>{say(`method.${payment.method}`)}</td>
                  <td>{payment.by}</td>
                  <td>{moneyText(payment.amount)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollX>
      )}
      <PaymentForm page={page} />
    </section>
  );
}
