import { Radio, RadioGroup } from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";
import type { Option } from "./select-field.tsx";

export interface ChoiceFieldProps<Value extends string> extends FieldWords {
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
  readonly options: readonly Option<Value>[];
}

/** One of a few, all in sight. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { label, note, error, value, onChange, options } = props;
  return (
    <RadioGroup
      className="field"
      value={value}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      onChange={(next) => {
        const found = options.find((option) => option.value === next);
        if (found !== undefined) onChange(found.value);
      }}
    >
      <FieldLabel>{label}</FieldLabel>
      <div className="choices">
        {options.map((option) => (
          <Radio key={option.value} value={option.value} className="choice">
            {option.label}
          </Radio>
        ))}
      </div>
      <FieldFoot note={note} error={error} />
    </RadioGroup>
  );
}
