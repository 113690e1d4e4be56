import type { SettlementLine } from "@setfair/engine";
import { useState } from "react";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { answerOf, type Said, saidOf } from "./conversation.ts";
import { EvidencePhotos, Shot } from "./evidence-photos.tsx";
import { ReplyForm } from "./reply-form.tsx";
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
  const answer = answerOf(said);
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
      {said.length > 0 && <Talk token={token} said={said} />}
      <p className="statement-state" role="status">
        <strong>{t(`hirer.statement.said.${answer ?? "none"}`)}</strong>
      </p>
      <Answer line={line} answer={answer} shown={shown} />
    </li>
  );
}

function Answer({
  line,
  answer,
  shown,
}: {
  readonly line: SettlementLine;
  readonly answer: "accept" | "dispute" | null;
  readonly shown: StatementOnPhone;
}) {
  const [isDisputing, setDisputing] = useState(false);
  const [isFull, setFull] = useState(false);
  const accept = () => {
    setFull(false);
    shown.answerLine(line.id, "accept", "", []).catch(() => setFull(true));
  };
  if (isDisputing)
    return (
      <ReplyForm
        about={lineTitle(line)}
        onSend={(text, pictures) => shown.answerLine(line.id, "dispute", text, pictures)}
        onDone={() => setDisputing(false)}
      />
    );
  return (
    <>
      <div className="two-calls">
        {answer !== "accept" && (
          <button type="button" className="button" onClick={accept}>
            {t("hirer.statement.accept")}
            <span className="visually-hidden">: {lineTitle(line)}</span>
          </button>
        )}
        <button type="button" className="button" onClick={() => setDisputing(true)}>
          {t(answer === "dispute" ? "hirer.statement.more" : "hirer.statement.dispute")}
          <span className="visually-hidden">: {lineTitle(line)}</span>
        </button>
      </div>
      {isFull && (
        <p className="field-error" role="alert">
          {t("hirer.missed.notKept")}
        </p>
      )}
    </>
  );
}

/** Where the words of an entry are given by its kind, not by whoever wrote it. */
function kindText({ kind, pence }: Said): string | null {
  const amount = moneyText({ currency: "GBP", pence: pence ?? 0 });
  switch (kind) {
    case "accept":
    case "withdraw":
      return t(`hirer.statement.talk.${kind}`);
    case "estimate":
    case "invoice":
      return t(`hirer.statement.talk.${kind}`, { amount });
    default:
      return null;
  }
}

function Talk({ token, said }: { readonly token: string; readonly said: readonly Said[] }) {
  return (
    <section aria-label={t("hirer.statement.talk")}>
      <p className="field-label">{t("hirer.statement.talk")}</p>
      <ul className="talk">
        {said.map((one) => (
          <li key={one.id} className={one.by === "hirer" ? "talk-own" : undefined}>
            <p className="quiet">
              {t(one.by === "hirer" ? "hirer.statement.you" : "hirer.statement.depot", {
                at: dateText(one.at, "dayTime"),
              })}
            </p>
            <p>{[kindText(one), one.text].filter((text) => text !== null && text !== "").join(" ")}</p>
            {one.state === "sent" && one.photographs.length > 0 && (
              <ul className="shots">
                {one.photographs.map((sha256, k) => (
                  <li key={sha256}>
                    <Shot token={token} sha256={sha256} label={t("hirer.missed.photoNumber", { k: k + 1 })} />
                  </li>
                ))}
              </ul>
            )}
            {one.state === "waiting" && <p className="quiet">{t("hirer.statement.waiting")}</p>}
            {one.state === "refused" && (
              <p className="field-error">{t("hirer.statement.refused", { problem: one.problem ?? "" })}</p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
