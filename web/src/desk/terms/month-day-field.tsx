import { NumberField, SelectField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

const MONTHS = Array.from({ length: 12 }, (_, k) => String(k + 1).padStart(2, "0"));
const daysIn = (month: string): number => new Date(Date.UTC(2028, Number(month), 0)).getUTCDate();

export const monthText = (month: string): string => t("rates.monthName", { month });

export interface MonthDayFieldProps {
  readonly label: string;
  /** `MM-DD` */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A day of the year, without a year. */
export function MonthDayField({ label, value, onChange }: MonthDayFieldProps) {
  const [month = "01", day = "01"] = value.split("-");
  const write = (nextMonth: string, nextDay: number) =>
    onChange(`${nextMonth}-${String(Math.min(Math.max(nextDay, 1), daysIn(nextMonth))).padStart(2, "0")}`);
  return (
    <div className="month-day">
      <NumberField
        label={t("rates.dayOf", { what: label })}
        value={Number(day)}
        min={1}
        max={daysIn(month)}
        onChange={(next) => write(month, next ?? 1)}
      />
      <SelectField
        label={t("rates.monthOf", { what: label })}
        value={month}
        options={MONTHS.map((id) => ({ value: id, label: monthText(id) }))}
        onChange={(next) => write(next, Number(day))}
      />
    </div>
  );
}
