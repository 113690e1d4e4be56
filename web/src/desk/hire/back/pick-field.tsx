import { TickField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";

interface PickFieldProps {
  readonly label: string;
  readonly note?: string | undefined;
  readonly error?: string | undefined;
  readonly of: readonly { readonly sha256: string; readonly label: string }[];
  readonly value: readonly string[];
  readonly onChange: (hashes: readonly string[]) => void;
}

/** Some of the photographs that are there already. */
export function PickField({ label, note, error, of, value, onChange }: PickFieldProps) {
  return (
    <fieldset className="field pick ask-wide">
      <legend className="field-label">{label}</legend>
      {of.length === 0 && <span className="quiet">{t("settling.noneOut")}</span>}
      <ul>
        {of.map((photograph) => (
          <li key={photograph.sha256}>
            <img
              src={`/api/photos/${photograph.sha256}?size=small`}
              alt=""
              loading="lazy"
              className="pick-picture"
            />
            <TickField
              value={value.includes(photograph.sha256)}
              onChange={(ticked) =>
                onChange(
                  ticked ? [...value, photograph.sha256] : value.filter((hash) => hash !== photograph.sha256),
                )
              }
            >
              {photograph.label}
            </TickField>
          </li>
        ))}
      </ul>
      <span className={error === undefined ? "field-note" : "field-error"}>{error ?? note}</span>
    </fieldset>
  );
}
