import { NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

interface WearFieldsProps {
  /** years in which a thing loses its value evenly */
  readonly years: number | null;
  /** percent of its value that it never falls below */
  readonly least: number | null;
  readonly onYears: (years: number | null) => void;
  readonly onLeast: (least: number | null) => void;
  readonly errors: { readonly years: string | undefined; readonly least: string | undefined };
}

/** How a thing loses its value: never new for old. */
export function WearFields({ years, least, onYears, onLeast, errors }: WearFieldsProps) {
  return (
    <div className="sheet-fields">
      <NumberField
        label={t("firmPrices.life")}
        unit={t("firmPrices.years")}
        note={t("firmPrices.lifeNote")}
        value={years}
        min={0.1}
        max={40}
        onChange={onYears}
        error={errors.years}
      />
      <NumberField
        label={t("firmPrices.least")}
        unit="%"
        note={t("firmPrices.leastNote")}
        value={least}
        min={0}
        max={100}
        onChange={onLeast}
        error={errors.least}
      />
    </div>
  );
}
