import type { Schemas } from "../../api/client.ts";
import { ScrollX } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

/** How VAT falls on each kind of line, with its source and what an accountant must confirm. */
export function VatCard({ vat }: { readonly vat: Schemas["MoneyPage"]["vat"] }) {
  const open = vat.filter(({ toConfirm, isRead }) => toConfirm !== null || !isRead).length;
  return (
    <section className="card stack-tight" aria-labelledby="money-vat">
      <h2 id="money-vat">{t("vatTable.title")}</h2>
      <p>{t("vatTable.lead", { n: open })}</p>
      <details>
        <summary className="fold">{t("vatTable.open")}</summary>
        <ScrollX label={t("vatTable.title")}>
          <table className="dense">
            <thead>
              <tr>
                <th>{t("vatTable.line")}</th>
                <th>{t("invoice.rate")}</th>
                <th>{t("vatTable.confirm")}</th>
                <th>{t("vatTable.source")}</th>
              </tr>
            </thead>
            <tbody>
              {vat.map(({ line, kind, ratePercent, source, isRead, toConfirm }) => (
                <tr key={line}>
                  <td>{t(`lineKind.${line}`)}</td>
                  <td>{t("invoice.rateOf", { kind, rate: ratePercent })}</td>
                  <td>{toConfirm ?? (isRead ? "–" : t("vatTable.memory"))}</td>
                  <td className="quiet">{source}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollX>
      </details>
    </section>
  );
}
