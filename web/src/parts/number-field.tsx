import { keptOf, timesTyped } from "@setfair/words/guide";
import { NumberField as AriaNumberField, Button, Group, Input } from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";
import { distancesIn, has, say, t } from "./words.ts";

export interface NumberFieldProps extends FieldWords {
  /** null while nothing is entered */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
  /** symbol after the number; `km` and `pence/km` are typed in miles where the depot writes miles, and kept in km */
  readonly unit?: string;
  /** show the two stepping buttons */
  readonly stepper?: boolean;
  readonly format?: Intl.NumberFormatOptions;
  readonly required?: boolean;
}

/** A unit behind a label, in the depot's distances. */
const unitWord = (unit: string): string => {
  const id = `typed.${unit}.${distancesIn()}`;
  return has(id) ? say(id) : unit;
};

/** A number with its unit; the steppers are as big as any other target. */
export function NumberField(props: NumberFieldProps) {
  const { label, note, error, onChange, step, unit, stepper = false } = props;
  const times = unit === undefined ? 1 : timesTyped(unit, distancesIn());
  const typed = (kept: number) => (times === 1 ? kept : Math.round(kept * times * 100) / 100);
  const [min, max] = [props.min, props.max].map((bound) => (bound === undefined ? undefined : typed(bound)));
  return (
    <AriaNumberField
      className="field"
      value={props.value === null ? Number.NaN : typed(props.value)}
      onChange={(next) => onChange(Number.isNaN(next) ? null : keptOf(next, times))}
      isInvalid={error !== undefined}
      isRequired={props.required ?? false}
      validationBehavior="aria"
      {...(min === undefined ? {} : { minValue: min })}
      {...(max === undefined ? {} : { maxValue: max })}
      {...(step === undefined ? {} : { step })}
      {...(props.format === undefined ? {} : { formatOptions: props.format })}
    >
      <FieldLabel>{unit === undefined ? label : `${label}, ${unitWord(unit)}`}</FieldLabel>
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
