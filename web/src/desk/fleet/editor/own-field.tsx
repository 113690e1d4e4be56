import { BODY_STYLES, STARTING_POINTS } from "@setfair/engine";
import { DateField, NumberField, SelectField, TextField, TickField } from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";
import { fieldName, optionName } from "../field-words.ts";
import { valueAt } from "./draft.ts";
import type { Editing } from "./editing.ts";
import type { OwnField } from "./vehicle-fields.ts";

export interface OwnFieldProps {
  readonly field: OwnField;
  readonly editing: Editing;
}

const numberOf = (value: unknown): number | null => (typeof value === "number" ? value : null);
const textOf = (value: unknown): string => (typeof value === "string" ? value : "");
const PRECISE = { maximumFractionDigits: 4 };

/** Says where a value is only what is usual for the body style. */
function useNote({ field, editing }: OwnFieldProps): string | undefined {
  const value = editing.at(field.path);
  const style = BODY_STYLES.find((each) => each === editing.at("bodyStyle"));
  const isUsual =
    field.type === "number" &&
    style !== undefined &&
    value !== undefined &&
    valueAt(STARTING_POINTS[style], field.path) === value;
  if (isUsual) return t("fleet.edit.usual");
  const id = `field.note.${field.path}`;
  return field.hasNote === true && has(id) ? say(id) : undefined;
}

function Control({ field, editing }: OwnFieldProps) {
  const { path } = field;
  const value = editing.at(path);
  const words = {
    label: fieldName(null, path),
    note: useNote({ field, editing }),
    error: editing.wrongAt(path),
  };
  switch (field.type) {
    case "text":
      return <TextField {...words} value={textOf(value)} onChange={(next) => editing.change(path, next)} />;
    case "date":
      return <DateField {...words} value={textOf(value)} onChange={(next) => editing.change(path, next)} />;
    case "flag":
      return (
        <TickField value={value === true} onChange={(next) => editing.change(path, next)}>
          {words.label}
        </TickField>
      );
    case "choice":
      return (
        <SelectField
          {...words}
          value={textOf(value) === "" ? null : textOf(value)}
          options={(field.options ?? []).map((each) => ({
            value: each,
            label: optionName(null, path, each),
          }))}
          onChange={(next) => editing.change(path, next)}
        />
      );
    case "share": {
      const share = numberOf(value);
      return (
        <NumberField
          {...words}
          format={PRECISE}
          value={share === null ? null : Math.round(share * 10_000) / 100}
          onChange={(next) => editing.change(path, next === null ? null : next / 100)}
        />
      );
    }
    case "number":
      return (
        <NumberField
          {...words}
          format={PRECISE}
          value={numberOf(value)}
          onChange={(next) => editing.change(path, next)}
          {...(field.unit === undefined ? {} : { unit: field.unit })}
        />
      );
  }
}

/** One field of the vehicle itself, with what is wrong in it. */
export function OwnFieldView(props: OwnFieldProps) {
  return (
    <div data-path={props.field.path}>
      <Control {...props} />
    </div>
  );
}

/** Several in a grid. */
export function OwnFields({
  fields,
  editing,
}: {
  readonly fields: readonly OwnField[];
  readonly editing: Editing;
}) {
  return (
    <div className="sheet-fields">
      {fields.map((field) => (
        <OwnFieldView key={field.path} field={field} editing={editing} />
      ))}
    </div>
  );
}
