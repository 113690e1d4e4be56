import type { ReactNode } from "react";
import { NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

interface DaysFieldProps {
  readonly label: string;
  readonly value: number;
  readonly usual: number;
  readonly min: number;
  readonly max: number;
  readonly error: string | undefined;
  readonly mayWrite: boolean;
  readonly onChange: (days: number) => void;
  /** what follows from it, for the next hire */
  readonly children: ReactNode;
}

/** Whole days, with what follows from them. */
export function DaysField(props: DaysFieldProps) {
  const { label, value, usual, min, max, error, mayWrite, onChange, children } = props;
  const unit = t("figures.days");
  return (
    <div className="stack-tight">
      {mayWrite ? (
        <NumberField
          label={label}
          unit={unit}
          note={t("figures.range", { min, max, usual: value === usual ? "same" : String(usual) })}
          value={value}
          min={min}
          max={max}
          onChange={(n) => onChange(n ?? min)}
          error={error}
        />
      ) : (
        <p>{t("figures.said", { label, n: value, unit })}</p>
      )}
      {children}
    </div>
  );
}
