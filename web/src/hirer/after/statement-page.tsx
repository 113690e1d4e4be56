import type { Settlement } from "@setfair/engine";
import type { Guide } from "../../offline/database.ts";
import type { Statement } from "../../offline/statement.ts";
import { ScrollMain } from "../../parts/scroll-main.tsx";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { LineCard } from "./line-card.tsx";
import { Notices } from "./notices.tsx";
import { statementSums } from "./statement-words.ts";
import { useStatement } from "./use-statement.ts";

/** What is charged and why, line by line, and what goes back; each line accepted or disputed. */
export default function StatementPage({ token, guide }: { readonly token: string; readonly guide: Guide }) {
  const shown = useStatement(token, guide.hireId);
  const { statement, answer, keptAt } = shown;
  const result = statement === null ? null : (statement.result as unknown as Settlement);
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.statement.title")}</h1>
      {statement === null || result === null ? (
        <p role="status">
          {t(
            answer === "asking"
              ? "hirer.loading"
              : answer === "none"
                ? "hirer.statement.none"
                : "hirer.statement.coming",
          )}
        </p>
      ) : (
        <>
          <p>
            {t("hirer.statement.about", {
              vehicle: statement.vehicle,
              reference: statement.reference,
              at: dateText(statement.frozenAt, "fullTime"),
              depot: statement.depot.name,
            })}
          </p>
          {keptAt !== null && (
            <p className="quiet">{t("hirer.statement.keptAt", { at: dateText(keptAt, "dayTime") })}</p>
          )}
          <Sums statement={statement} result={result} />
          <section className="stack" aria-labelledby="lines">
            <h2 id="lines">{t("hirer.statement.lines")}</h2>
            <p className="quiet">{t("hirer.statement.how")}</p>
            {result.lines.length === 0 && <p>{t("settlement.nothing")}</p>}
            <ul className="stack">
              {result.lines.map((line) => (
                <LineCard key={line.id} token={token} line={line} shown={shown} />
              ))}
            </ul>
          </section>
          <Notices token={token} statement={statement} shown={shown} />
          <a className="button" href={`/api/guide/${encodeURIComponent(token)}/papers/statement`}>
            {t("hirer.statement.pdf")}
          </a>
          <a className="button" href={`/api/guide/${encodeURIComponent(token)}/papers/condition`}>
            {t("hirer.statement.condition")}
          </a>
          <p className="quiet">{t("hirer.statement.rights")}</p>
        </>
      )}
      <a className="button" href="#day">
        {t("hirer.panel.back")}
      </a>
    </ScrollMain>
  );
}

function Sums({ statement, result }: { readonly statement: Statement; readonly result: Settlement }) {
  const isHeld = result.depositWithheld.pence > 0;
  return (
    <section className="card stack-tight" aria-labelledby="sums">
      <h2 id="sums">{t("hirer.statement.sums")}</h2>
      <dl className="sums">
        {result.overExcess.pence !== 0 && (
          <Sum name={t("hirer.statement.overExcess")} amount={moneyText(result.overExcess)} />
        )}
        {statementSums(result).map(({ id, name, amount }) => (
          <Sum key={id} name={name} amount={amount} />
        ))}
      </dl>
      {isHeld && (
        <p>
          {statement.promisedOn === null
            ? t("hirer.statement.heldNoDay", { telephone: statement.depot.telephone })
            : t("hirer.statement.held", { on: dateText(statement.promisedOn, "full") })}
        </p>
      )}
      <p>{t("settlement.releaseBy", { on: dateText(statement.releaseBy, "full") })}</p>
    </section>
  );
}

function Sum({ name, amount }: { readonly name: string; readonly amount: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{amount}</dd>
    </div>
  );
}
