import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, DateField, Dialog, TextField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { CorrectForm } from "./correct-form.tsx";
import {
  caseTexts,
  holdsText,
  type Rule,
  type RuleLine,
  readText,
  ruleName,
  valueText,
} from "./rule-words.ts";
import { rulesChanged } from "./rules-changed.ts";

/** One rule: every version of it, who read it when, and a manager's own version of it. */
export function RuleDialog({ line, onClose }: { readonly line: RuleLine; readonly onClose: () => void }) {
  const { user } = useSignedIn();
  return (
    <Dialog title={ruleName(line.id)} isOpen onClose={onClose} wide>
      <p className="quiet">{line.id}</p>
      <section className="stack-tight">
        <h3>{t("rules.shipped")}</h3>
        <ul className="rules-versions">
          {line.shipped.map((rule) => (
            <Version key={rule.validFrom} rule={rule} />
          ))}
        </ul>
      </section>
      {line.own.length > 0 && (
        <section className="stack-tight">
          <h3>{t("rules.own")}</h3>
          <ul className="rules-versions">
            {line.own.map(({ rule, by, at }) => (
              <Version
                key={rule.validFrom}
                rule={rule}
                by={t("rules.ownBy", { by, at: dateText(at, "short") })}
              >
                {user.role === "manager" && <Withdraw id={line.id} validFrom={rule.validFrom} />}
              </Version>
            ))}
          </ul>
        </section>
      )}
      {line.readAgain.length > 0 && (
        <section className="stack-tight">
          <h3>{t("rules.readAgain")}</h3>
          <ul>
            {line.readAgain.map(({ readOn, source, by, at }) => (
              <li key={at}>{t("rules.readAgainBy", { on: dateText(readOn, "short"), source, by })}</li>
            ))}
          </ul>
        </section>
      )}
      {user.role !== "manager" && <p className="quiet">{t("rules.managerOnly")}</p>}
      {user.role === "manager" && line.off === null && (
        <>
          <ConfirmForm line={line} />
          <CorrectForm line={line} />
        </>
      )}
    </Dialog>
  );
}

interface VersionProps {
  readonly rule: Rule;
  readonly by?: string;
  readonly children?: React.ReactNode;
}

function Version({ rule, by, children }: VersionProps) {
  return (
    <li>
      <strong>{valueText(rule.id, rule.value, rule.unit)}</strong> {holdsText(rule)}
      <div className="quiet">
        {rule.source} · {readText(rule)}
        {by !== undefined && ` · ${by}`}
      </div>
      {caseTexts(rule).map((text) => (
        <div key={text}>{text}</div>
      ))}
      {rule.leadDays !== undefined && <div>{t("rules.leadDays", { n: rule.leadDays })}</div>}
      {rule.note !== undefined && <div>{rule.note}</div>}
      {rule.unsettled !== undefined && (
        <div className="rules-mark">{t("rules.unsettled", { why: rule.unsettled })}</div>
      )}
      {rule.off !== undefined && <div className="rules-mark">{t("rules.off", { why: rule.off })}</div>}
      {children}
    </li>
  );
}

function Withdraw({ id, validFrom }: { readonly id: string; readonly validFrom: string }) {
  const withdraw = useMutation({
    mutationFn: () =>
      take(
        client.POST("/api/rules/{ruleId}/withdrawals", {
          params: { path: { ruleId: id } },
          body: { validFrom },
        }),
      ),
    onSuccess: rulesChanged,
  });
  return (
    <>
      <Button look="quiet" onPress={() => withdraw.mutate()} isPending={withdraw.isPending}>
        {t("rules.withdraw", { from: dateText(validFrom, "short") })}
      </Button>
      <FailureNote failure={withdraw.error} />
    </>
  );
}

function ConfirmForm({ line }: { readonly line: RuleLine }) {
  const { today } = useSignedIn();
  const [readOn, setReadOn] = useState(today);
  const [source, setSource] = useState("");
  const confirm = useMutation({
    mutationFn: () =>
      take(
        client.POST("/api/rules/{ruleId}/readings", {
          params: { path: { ruleId: line.id } },
          body: { readOn, source },
        }),
      ),
    onSuccess: () => {
      setSource("");
      rulesChanged();
    },
  });
  return (
    <details className="rules-form">
      <summary className="fold">{t("rules.confirm")}</summary>
      <div className="sheet-fields">
        <DateField
          label={t("rules.confirmDay")}
          value={readOn}
          onChange={setReadOn}
          error={problemAt(confirm.error, "readOn")}
        />
        <TextField
          label={t("rules.confirmSource")}
          value={source}
          onChange={setSource}
          error={problemAt(confirm.error, "source")}
        />
      </div>
      <FailureNote failure={confirm.error} />
      <Button
        look="main"
        onPress={() => confirm.mutate()}
        isPending={confirm.isPending}
        isDisabled={source.trim() === "" || readOn === ""}
      >
        {t("rules.keepConfirm")}
      </Button>
    </details>
  );
}
