import { TextField as AriaTextField, Input, TextArea } from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";

export interface TextFieldProps extends FieldWords {
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly name?: string;
  readonly type?: "text" | "email" | "tel" | "password" | "search";
  readonly autoComplete?: string;
  readonly required?: boolean;
  readonly lines?: number;
  readonly autoFocus?: boolean;
  readonly inputMode?: "text" | "numeric" | "decimal" | "tel" | "email" | "search";
}

/** One line of text, or several where `lines` is given. */
export function TextField(props: TextFieldProps) {
  const { label, note, error, value, onChange, lines, required = false } = props;
  return (
    <AriaTextField
      className="field"
      value={value}
      onChange={onChange}
      isRequired={required}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      type={props.type ?? "text"}
      {...(props.name === undefined ? {} : { name: props.name })}
      {...(props.autoComplete === undefined ? {} : { autoComplete: props.autoComplete })}
      {...(props.inputMode === undefined ? {} : { inputMode: props.inputMode })}
      autoFocus={props.autoFocus ?? false}
    >
      <FieldLabel>{label}</FieldLabel>
      {lines === undefined ? <Input className="input" /> : <TextArea className="input" rows={lines} />}
      <FieldFoot note={note} error={error} />
    </AriaTextField>
  );
}
