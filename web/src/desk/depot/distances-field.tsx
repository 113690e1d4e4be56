import { ChoiceField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

interface DistancesFieldProps {
  readonly value: "km" | "mi";
  readonly onChange: (value: "km" | "mi") => void;
}

/** What distances are read and written in. */
export function DistancesField({ value, onChange }: DistancesFieldProps) {
  return (
    <ChoiceField
      label={t("distances.title")}
      note={t("distances.note")}
      value={value}
      options={(["mi", "km"] as const).map((unit) => ({ value: unit, label: t(`distances.${unit}`) }))}
      onChange={onChange}
    />
  );
}
