import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, ChoiceField, DateField, NumberField, SelectField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { type Rule, type RuleLine, valueText } from "./rule-words.ts";
import { rulesChanged } from "./rules-changed.ts";

const CONFIDENCE = ["read", "secondary", "memory"] as const;

interface Draft {
  readonly value: Rule["value"] | null;
  readonly validFrom: string;
  readonly validTo: string;
  readonly source: string;
  readonly confidence: Rule["confidence"];
  readonly unsettled: string;
  readonly note: string;
}

/** The depot's own version of a rule: value, from when, where it was read, how surely it is known. */
export function CorrectForm({ line }: { readonly line: RuleLine }) {
  const { today } = useSignedIn();
  const base = line.now ?? line.shipped[0];
  const [draft, setDraft] = useState<Draft>({
    value: base?.value ?? null,
    validFrom: today,
    validTo: "",
    source: "",
    confidence: "read",
    unsettled: "",
    note: base?.note ?? "",
  });
  const set = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const keep = useMutation({
    mutationFn: () =>
      take(
        client.PUT("/api/rules/{ruleId}", {
          params: { path: { ruleId: line.id } },
          body: bodyOf(draft, today, base?.leadDays),
        }),
      ),
    onSuccess: rulesChanged,
  });
  if (base === undefined) return null;
  const at = (field: string) => problemAt(keep.error, field);
  return (
    <details className="rules-form">
      <summary className="fold">{t("rules.correct")}</summary>
      <div className="sheet-fields">
        <ValueField
          line={line}
          base={base}
          value={draft.value}
          set={(value) => set({ value })}
          error={at("value")}
        />
        <DateField
          label={t("rules.validFrom")}
          value={draft.validFrom}
          onChange={(validFrom) => set({ validFrom })}
          error={at("validFrom")}
        />
        <DateField
          label={t("rules.validTo")}
          value={draft.validTo}
          onChange={(validTo) => set({ validTo })}
          error={at("validTo")}
        />
        <TextField
          label={t("rules.confirmSource")}
          value={draft.source}
          onChange={(source) => set({ source })}
          error={at("source")}
        />
        <SelectField
          label={t("rules.confidence")}
          value={draft.confidence}
          options={CONFIDENCE.map((value) => ({ value, label: t(`rules.confidence.${value}`) }))}
          onChange={(confidence) => set({ confidence })}
        />
        <TextField
          label={t("rules.why")}
          value={draft.unsettled}
          onChange={(unsettled) => set({ unsettled })}
        />
        <TextField label={t("rules.note")} value={draft.note} onChange={(note) => set({ note })} />
      </div>
      <FailureNote failure={keep.error} />
      <Button
        look="main"
        onPress={() => keep.mutate()}
        isPending={keep.isPending}
        isDisabled={draft.value === null || draft.validFrom === "" || draft.source.trim() === ""}
      >
        {t("rules.keep")}
      </Button>
    </details>
  );
}

function bodyOf(draft: Draft, today: string, leadDays: number | undefined) {
  const { value, validFrom, validTo, source, confidence, unsettled, note } = draft;
  return {
    value: value ?? "",
    validFrom,
    readOn: today,
    source,
    confidence,
    ...(validTo === "" ? {} : { validTo }),
    ...(unsettled.trim() === "" ? {} : { unsettled }),
    ...(note.trim() === "" ? {} : { note }),
    ...(leadDays === undefined ? {} : { leadDays }),
  };
}

interface ValueProps {
  readonly line: RuleLine;
  readonly base: Rule;
  readonly value: Rule["value"] | null;
  readonly set: (value: Rule["value"] | null) => void;
  readonly error: string | undefined;
}

/** A number, a word that rooms know, yes or no, or a text: whatever the rule that ships has. */
function ValueField({ line, base, value, set, error }: ValueProps) {
  const label = base.unit === "-" ? t("rules.newValuePlain") : t("rules.newValue", { unit: base.unit });
  if (typeof base.value === "number")
    return (
      <NumberField
        label={label}
        value={typeof value === "number" ? value : null}
        onChange={set}
        min={0}
        step={0.01}
        error={error}
      />
    );
  if (typeof base.value === "boolean")
    return (
      <ChoiceField
        label={label}
        value={value === true ? "yes" : "no"}
        options={[
          { value: "yes", label: t("rules.yes") },
          { value: "no", label: t("rules.no") },
        ]}
        onChange={(each) => set(each === "yes")}
      />
    );
  if (line.values !== null)
    return (
      <SelectField
        label={label}
        value={String(value)}
        options={line.values.map((each) => ({ value: each, label: valueText(line.id, each, base.unit) }))}
        onChange={set}
        error={error}
      />
    );
  return <TextField label={label} value={String(value ?? "")} onChange={set} error={error} />;
}
