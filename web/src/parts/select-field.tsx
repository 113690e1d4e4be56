import { Button, type Key, ListBox, ListBoxItem, Popover, Select, SelectValue } from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";
import { t } from "./words.ts";

export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

export interface SelectFieldProps<Value extends string> extends FieldWords {
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
  readonly options: readonly Option<Value>[];
}

/** One of a list. */
export function SelectField<Value extends string>(props: SelectFieldProps<Value>) {
  const { label, note, error, value, onChange, options } = props;
  const choose = (key: Key | null) => {
    const found = options.find((option) => option.value === key);
    if (found !== undefined) onChange(found.value);
  };
  return (
    <Select
      className="field"
      value={value}
      onChange={choose}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      placeholder={t("parts.choose")}
    >
      <FieldLabel>{label}</FieldLabel>
      <Button className="select-button">
        <SelectValue />
        <span aria-hidden="true">▾</span>
      </Button>
      <FieldFoot note={note} error={error} />
      <Popover className="list-popover">
        <ListBox>
          {options.map((option) => (
            <ListBoxItem
              key={option.value}
              id={option.value}
              textValue={option.label}
              className="list-option"
            >
              {option.label}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
