import type { SettlementLine } from "@setfair/engine";
import { moneyText, t } from "../../parts/words.ts";
import { Answers } from "./answers.tsx";
import { saidOf } from "./conversation.ts";
import { EvidencePhotos } from "./evidence-photos.tsx";
import { lineReason, lineTitle, lineWorking } from "./statement-words.ts";
import type { StatementOnPhone } from "./use-statement.ts";

export interface LineCardProps {
  readonly token: string;
  readonly line: SettlementLine;
  readonly shown: StatementOnPhone;
}

/** One line: what, how much and why, what shows it, what was said, and the hirer's answer. */
export function LineCard({ token, line, shown }: LineCardProps) {
  const evidence = shown.statement?.evidence.find(({ lineId }) => lineId === line.id);
  const about = { id: line.id, differenceId: line.evidence.differenceId };
  const said = saidOf(about, shown.statement?.entries ?? [], shown.own);
  const reason = lineReason(line);
  const working = lineWorking(line);
  return (
    <li className="card stack-tight statement-line">
      <h3>{lineTitle(line)}</h3>
      <p className="statement-amount">
        {line.amount.pence === 0
          ? t("hirer.statement.noCharge")
          : t("hirer.statement.charged", { amount: moneyText(line.amount) })}
      </p>
      {line.awaiting.pence > 0 && (
        <p>{t("hirer.statement.awaiting", { amount: moneyText(line.awaiting) })}</p>
      )}
      {reason !== null && <p>{reason}</p>}
      {working.length > 0 && (
        <>
          <p className="field-label">{t("hirer.statement.why")}</p>
          <ul className="tried">
            {working.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ul>
        </>
      )}
      <EvidencePhotos token={token} out={evidence?.out ?? []} back={evidence?.back ?? []} />
      {line.evidence.records.length > 0 && (
        <p className="quiet">{t("hirer.statement.records", { n: line.evidence.records.length })}</p>
      )}
      <Answers token={token} line={{ id: line.id, name: lineTitle(line) }} said={said} shown={shown} />
    </li>
  );
}
