import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, Dialog, ScrollX, TextField } from "../../../parts/index.ts";
import { dateText, has, moneyText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type HireMoney, useMoneyAct } from "./use-money.ts";

type Line = NonNullable<HireMoney["toInvoice"]>["lines"][number];
type Invoice = HireMoney["invoices"][number];

const pounds = (pence: number) => ({ currency: "GBP", pence }) as const;

function aboutText(about: string): string {
  const id = [`quoteAbout.${about}`, about, `charge.${about}`].find((each) => has(each));
  return id === undefined ? about : say(id);
}

function lineText({ text, facts }: Line): string {
  const note = typeof facts.note === "string" && facts.note !== "" ? `: ${facts.note}` : "";
  const about = aboutText(String(facts.about ?? ""));
  const args = { about, count: Number(facts.count ?? 1), each: pounds(Number(facts.eachPence ?? 0)) };
  return has(text) ? `${t(text, args)}${note}` : text;
}

function ToInvoice({ draft }: { readonly draft: NonNullable<HireMoney["toInvoice"]> }) {
  return (
    <ScrollX label={t("invoices.next")}>
      <table className="dense amounts">
        <thead>
          <tr>
            <th>{t("invoices.what")}</th>
            <th>{t("invoice.rate")}</th>
            <th>{t("invoice.vat")}</th>
            <th>{t("money.amount")}</th>
          </tr>
        </thead>
        <tbody>
          {draft.lines.map((line) => (
            <tr key={`${line.key} ${line.vat} ${line.ratePercent}`}>
              <td>{lineText(line)}</td>
              <td>{t("invoice.rateOf", { kind: line.vat, rate: line.ratePercent })}</td>
              <td>{moneyText(pounds(line.vatPence))}</td>
              <td>{moneyText(pounds(line.grossPence))}</td>
            </tr>
          ))}
          <tr className="amounts-total">
            <td>{t("invoice.total")}</td>
            <td />
            <td>{moneyText(draft.vat)}</td>
            <td>{moneyText(draft.total)}</td>
          </tr>
        </tbody>
      </table>
    </ScrollX>
  );
}

/** What the hirer disputes: it stands on the next invoice by name, and is asked for nowhere. */
function Disputed({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <div className="stack-tight">
      <h3>{t("invoice.disputed.title")}</h3>
      <table className="dense amounts">
        <thead className="visually-hidden">
          <tr>
            <th>{t("invoices.what")}</th>
            <th>{t("money.amount")}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.key}>
              <td>{lineText(line)}</td>
              <td>{moneyText(pounds(line.grossPence))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">{t("invoice.disputed.note")}</p>
    </div>
  );
}

interface CreditDialogProps {
  readonly hireId: string;
  readonly invoice: Invoice;
  readonly onClose: () => void;
}

function CreditDialog({ hireId, invoice, onClose }: CreditDialogProps) {
  const [reason, setReason] = useState("");
  const credit = useMoneyAct(
    hireId,
    () =>
      take(
        client.POST("/api/hires/{id}/invoices/{invoiceId}/credit", {
          params: { path: { id: hireId, invoiceId: invoice.id } },
          body: { reason: reason.trim() },
        }),
      ),
    onClose,
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    credit.mutate();
  };
  return (
    <Dialog title={t("invoices.creditTitle", { number: invoice.number })} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <p>{t("invoices.creditLead", { money: invoice.total })}</p>
        <TextField
          label={t("refund.reason")}
          value={reason}
          onChange={setReason}
          error={problemAt(credit.error, "reason")}
        />
        <FailureNote failure={credit.error} shown={["reason"]} />
        <div className="row row-end">
          <Button type="submit" look="danger" isPending={credit.isPending} isDisabled={reason.trim() === ""}>
            {t("invoices.credit")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}

interface InvoiceLineProps {
  readonly hireId: string;
  readonly invoice: Invoice;
  readonly onCredit: () => void;
}

function InvoiceRow({ hireId, invoice, onCredit }: InvoiceLineProps) {
  const { id, number, kind, on, total, of, creditedBy, reason } = invoice;
  return (
    <li className="row spread invoice-line">
      <span>
        {t(`invoice.title.${kind}`, { number })}, {dateText(on, "short")}, {moneyText(total)}
        {of !== null && <span className="quiet"> {t("invoices.takesBack", { number: of })}</span>}
        {reason !== null && <span className="quiet"> {reason}</span>}
        {creditedBy !== null && (
          <span className="quiet"> {t("invoices.takenBack", { number: creditedBy })}</span>
        )}
      </span>
      <span className="row">
        <a
          className="button"
          href={`/api/hires/${encodeURIComponent(hireId)}/invoices/${encodeURIComponent(id)}/paper`}
          target="_blank"
          rel="noreferrer"
          aria-label={t("invoices.openPdf", { number })}
        >
          {t("invoices.pdf")}
        </a>
        {kind === "invoice" && creditedBy === null && (
          <Button look="quiet" onPress={onCredit} aria-label={t("invoices.creditOf", { number })}>
            {t("invoices.credit")}
          </Button>
        )}
      </span>
    </li>
  );
}

interface InvoicesCardProps {
  readonly hireId: string;
  readonly money: HireMoney;
}

/** Invoices and credit notes of the hire, and what would stand on the next. */
export function InvoicesCard({ hireId, money }: InvoicesCardProps) {
  const [crediting, setCrediting] = useState<Invoice | null>(null);
  const issue = useMoneyAct(hireId, () =>
    take(client.POST("/api/hires/{id}/invoices", { params: { path: { id: hireId } } })),
  );
  const { toInvoice, invoices, disputedLines } = money;
  if (toInvoice === null && invoices.length === 0 && disputedLines.length === 0) return null;
  return (
    <section className="card sheet" aria-labelledby="invoices-title">
      <h2 id="invoices-title">{t("invoices.title")}</h2>
      {invoices.length > 0 && (
        <ul className="plain-list">
          {invoices.map((invoice) => (
            <InvoiceRow
              key={invoice.id}
              hireId={hireId}
              invoice={invoice}
              onCredit={() => setCrediting(invoice)}
            />
          ))}
        </ul>
      )}
      {toInvoice === null ? (
        <p className="quiet">{t("invoices.all")}</p>
      ) : (
        <>
          <h3>{t("invoices.next")}</h3>
          <ToInvoice draft={toInvoice} />
          <FailureNote failure={issue.error} />
          <div className="row">
            <Button look="main" onPress={() => issue.mutate()} isPending={issue.isPending}>
              {t(`invoices.issue.${toInvoice.kind}`, { money: toInvoice.total })}
            </Button>
            <span className="quiet">{t("invoices.forEver")}</span>
          </div>
        </>
      )}
      {disputedLines.length > 0 && <Disputed lines={disputedLines} />}
      {crediting !== null && (
        <CreditDialog hireId={hireId} invoice={crediting} onClose={() => setCrediting(null)} />
      )}
    </section>
  );
}
