import type { Statement } from "../../offline/statement.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { Shot } from "./evidence-photos.tsx";

interface NoticesProps {
  readonly token: string;
  readonly statement: Statement;
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");
const pounds = (value: unknown): string => moneyText({ currency: "GBP", pence: Number(value ?? 0) });
const hashes = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);

/** Fines and tolls that were passed on: from whom, when, where, the sum, the fee apart, and the notice itself. */
export function Notices({ token, statement }: NoticesProps) {
  const notices = statement.entries.filter(({ kind }) => kind === "notice");
  if (notices.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="notices">
      <h2 id="notices">{t("hirer.statement.notices")}</h2>
      <ul className="stack">
        {notices.map(({ id, document }) => (
          <li key={id} className="stack-tight">
            <strong>
              {t("hirer.statement.notice", {
                what: text(document.what),
                amount: pounds(document.pence),
                issuer: text(document.issuer),
              })}
            </strong>
            <p>
              {t("hirer.statement.noticeWhere", {
                at: dateText(text(document.at), "fullTime"),
                where: text(document.where),
                reference: text(document.reference),
              })}
            </p>
            {Number(document.feePence ?? 0) > 0 && (
              <p>{t("hirer.statement.noticeFee", { amount: pounds(document.feePence) })}</p>
            )}
            <ul className="shots">
              {hashes(document.photographs).map((sha256, k) => (
                <li key={sha256}>
                  <Shot token={token} sha256={sha256} label={t("hirer.statement.noticeCopy", { k: k + 1 })} />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      <p className="quiet">{t("hirer.statement.noticeAsk", { telephone: statement.depot.telephone })}</p>
    </section>
  );
}
