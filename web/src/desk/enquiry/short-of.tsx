import type { Schemas } from "../../api/client.ts";
import { dateText, t } from "../../parts/words.ts";
import { stockKindText } from "../stock/stock-words.ts";

type Short = Schemas["HireStock"]["short"];

/** Who has what there is not enough of, and when one is back. */
export function ShortOf({ short }: { readonly short: Short }) {
  if (short.length === 0) return null;
  return (
    <div className="short-of">
      {short.map(({ kind, holders, backAt, fitsFrom }) => (
        <section key={kind} aria-label={stockKindText(kind)}>
          <h3>{t("stock.whoHas", { kind: stockKindText(kind) })}</h3>
          <ul>
            {holders.map((held) => (
              <li key={`${held.reference} ${held.from}`}>
                {t("stock.holder", {
                  customer: held.customer,
                  reference: held.reference,
                  count: held.count,
                  from: dateText(held.from, "dayTime"),
                  to: dateText(held.to, "dayTime"),
                })}
              </li>
            ))}
          </ul>
          {backAt !== null && <p>{t("stock.backAt", { at: dateText(backAt, "dayTime") })}</p>}
          <p className="quiet">
            {fitsFrom === null
              ? t("stock.neverEnough")
              : t("stock.fitsFrom", { at: dateText(fitsFrom, "dayTime") })}
          </p>
        </section>
      ))}
    </div>
  );
}
