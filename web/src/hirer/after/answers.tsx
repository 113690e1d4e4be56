import { useState } from "react";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { answerOf, type Said } from "./conversation.ts";
import { Shot } from "./evidence-photos.tsx";
import { ReplyForm } from "./reply-form.tsx";
import type { StatementOnPhone } from "./use-statement.ts";

interface AnswersProps {
  readonly token: string;
  /** what the answer is about, and its name */
  readonly line: { readonly id: string; readonly name: string };
  readonly said: readonly Said[];
  readonly shown: StatementOnPhone;
}

/** What was said of one line, how it stands, and the hirer's answer to it. */
export function Answers({ token, line, said, shown }: AnswersProps) {
  const answer = answerOf(said);
  return (
    <>
      {said.length > 0 && <Talk token={token} said={said} />}
      <p className="statement-state" role="status">
        <strong>{t(`hirer.statement.said.${answer ?? "none"}`)}</strong>
      </p>
      <Answer line={line} answer={answer} shown={shown} />
    </>
  );
}

interface AnswerProps extends Pick<AnswersProps, "line" | "shown"> {
  readonly answer: "accept" | "dispute" | null;
}

function Answer({ line, answer, shown }: AnswerProps) {
  const [isDisputing, setDisputing] = useState(false);
  const [isFull, setFull] = useState(false);
  const accept = () => {
    setFull(false);
    shown.answerLine(line.id, "accept", "", []).catch(() => setFull(true));
  };
  if (isDisputing)
    return (
      <ReplyForm
        about={line.name}
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
            <span className="visually-hidden">: {line.name}</span>
          </button>
        )}
        <button type="button" className="button" onClick={() => setDisputing(true)}>
          {t(answer === "dispute" ? "hirer.statement.more" : "hirer.statement.dispute")}
          <span className="visually-hidden">: {line.name}</span>
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
