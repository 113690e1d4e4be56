import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, Loading } from "../../../parts/index.ts";
import { moneyText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { PapersCard } from "../papers-card.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { EndHire } from "./end-hire.tsx";
import { InvoicesCard } from "./invoices-card.tsx";
import { LedgerCard } from "./ledger-card.tsx";
import { PaymentForm } from "./payment-form.tsx";
import { QuoteCard } from "./quote-card.tsx";
import { ScheduleCard } from "./schedule-card.tsx";
import { type HireMoney, useMoney } from "./use-money.ts";
import { WaitCard } from "./wait-card.tsx";
import "../../money/money.css";

/** What it costs, what was paid, what is held. */
export default function MoneyPart({ page }: PartProps) {
  return (
    <>
      <QuoteCard page={page} />
      <Book page={page} />
      <WaitCard page={page} />
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

function Sums({ money }: { readonly money: HireMoney }) {
  const { due, price, disputed } = money;
  const rows = [
    "price",
    ...(due.pence === price.pence ? [] : (["due"] as const)),
    ...(disputed.pence === 0 ? [] : (["disputed"] as const)),
    "settled",
    "owed",
    "depositDue",
    "depositHeld",
  ] as const;
  return (
    <dl className="sums">
      {rows.map((id) => (
        <div key={id}>
          <dt>{t(`money.${id}`)}</dt>
          <dd>{moneyText(money[id])}</dd>
        </div>
      ))}
    </dl>
  );
}

const MAY_AGREE = ["quote", "booked", "handedOver", "onHire"];

/** Sums, schedule, ledger and invoices; each computed from the entries. */
function Paid({ page }: PartProps) {
  const { id, stage } = page.hire;
  const money = useMoney(id);
  if (money.isPending) return <Loading />;
  if (money.isError) return <FailureNote failure={money.error} onAgain={() => void money.refetch()} />;
  return (
    <>
      <section className="card sheet" aria-labelledby="paid-title">
        <h2 id="paid-title">{t("money.title")}</h2>
        <Sums money={money.data} />
        <PaymentForm page={page} />
      </section>
      <ScheduleCard hireId={id} money={money.data} canAgree={MAY_AGREE.includes(stage)} />
      <LedgerCard hireId={id} money={money.data} />
      <InvoicesCard hireId={id} money={money.data} />
    </>
  );
}
