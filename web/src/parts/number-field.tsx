import { NumberField as AriaNumberField, Button, Group, Input } from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";
import { t } from "./words.ts";

export interface NumberFieldProps extends FieldWords {
  /** null while nothing is entered */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
  /** symbol after the number */
  readonly unit?: string;
  /** show the two stepping buttons */
  readonly stepper?: boolean;
  readonly format?: Intl.NumberFormatOptions;
  readonly required?: boolean;
}

/** A number with its unit; the steppers are as big as any other target. */
export function NumberField(props: NumberFieldProps) {
  const { label, note, error, value, onChange, min, max, step, unit, stepper = false } = props;
  return (
    <AriaNumberField
      className="field"
      value={value ?? Number.NaN}
      onChange={(next) => onChange(Number.isNaN(next) ? null : next)}
      isInvalid={error !== undefined}
      isRequired={props.required ?? false}
      validationBehavior="aria"
      {...(min === undefined ? {} : { minValue: min })}
      {...(max === undefined ? {} : { maxValue: max })}
      {...(step === undefined ? {} : { step })}
      {...(props.format === undefined ? {} : { formatOptions: props.format })}
    >
      <FieldLabel>{unit === undefined ? label : `${label}, ${unit}`}</FieldLabel>
      <Group className="number-box">
        {stepper && (
          <Button slot="decrement" className="button" aria-label={t("parts.less", { what: label })}>
            −
          </Button>
        )}
        <Input className="input" />
        {stepper && (
          <Button slot="increment" className="button" aria-label={t("parts.more", { what: label })}>
            +
          </Button>
        )}
      </Group>
      <FieldFoot note={note} error={error} />
    </AriaNumberField>
  );
}
