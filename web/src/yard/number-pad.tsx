import { t } from "../parts/words.ts";

const KEYS = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "back"] as const;

export interface NumberPadProps {
  readonly typed: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  readonly label: string;
  readonly onType: (typed: string) => unknown;
}

export const numberOfTyped = (typed: string): number | null =>
  /^\d+(\.\d*)?$/.test(typed) ? Number(typed) : null;

export const isWithin = (value: number | null, min: number, max: number): value is number =>
  value !== null && value >= min && value <= max;

/** Large keys for a gloved finger; the range is said before it is broken. */
export function NumberPad({ typed, unit, min, max, whole, label, onType }: NumberPadProps) {
  const press = (key: (typeof KEYS)[number]) => {
    if (key === "back") return onType(typed.slice(0, -1));
    if (key === "." && (whole || typed.includes(".") || typed === "")) return undefined;
    return typed.length < 8 ? onType(typed + key) : undefined;
  };
  const value = numberOfTyped(typed);
  const outside = value !== null && !isWithin(value, min, max);
  return (
    <div className="number-pad">
      <p className="number-shown" role="status" aria-label={label}>
        <output className="num">{typed === "" ? "–" : typed}</output> {unit}
      </p>
      <p className={outside ? "field-error" : "field-note"} role={outside ? "alert" : undefined}>
        {t("yard.range", { min, max, unit })}
      </p>
      <div className="number-keys">
        {KEYS.map((key) => (
          <button
            key={key}
            type="button"
            className="button"
            disabled={key === "." && whole}
            aria-label={key === "back" ? t("yard.key.back") : key === "." ? t("yard.key.point") : key}
            onClick={() => press(key)}
          >
            {key === "back" ? "⌫" : key}
          </button>
        ))}
      </div>
    </div>
  );
}
