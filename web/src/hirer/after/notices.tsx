import type { Statement } from "../../offline/statement.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { Answers } from "./answers.tsx";
import { saidOf } from "./conversation.ts";
import { Shot } from "./evidence-photos.tsx";
import type { StatementOnPhone } from "./use-statement.ts";

interface NoticesProps {
  readonly token: string;
  readonly statement: Statement;
  readonly shown: StatementOnPhone;
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");
const pounds = (value: unknown): string => moneyText({ currency: "GBP", pence: Number(value ?? 0) });
const hashes = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);

type Notice = Statement["entries"][number]["document"];
const titleOf = ({ what, pence, issuer }: Notice): string =>
  t("hirer.statement.notice", { what: text(what), amount: pounds(pence), issuer: text(issuer) });

/** Fines and tolls that were passed on: from whom, when, where, the sum, the fee apart, and the notice itself. */
export function Notices({ token, statement, shown }: NoticesProps) {
  const notices = statement.entries.filter(({ kind }) => kind === "notice");
  if (notices.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="notices">
      <h2 id="notices">{t("hirer.statement.notices")}</h2>
      <ul className="stack">
        {notices.map(({ id, document }) => (
          <li key={id} className="stack-tight statement-line">
            <h3>{titleOf(document)}</h3>
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
            <Answers
              token={token}
              line={{ id: `notice:${id}`, name: titleOf(document) }}
              said={saidOf({ id: `notice:${id}`, differenceId: null }, statement.entries, shown.own)}
              shown={shown}
            />
          </li>
        ))}
      </ul>
      <p className="quiet">{t("hirer.statement.noticeAsk", { telephone: statement.depot.telephone })}</p>
    </section>
  );
}
