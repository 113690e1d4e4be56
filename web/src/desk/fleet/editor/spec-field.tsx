import type { FieldSpec } from "@setfair/engine";
import { DateField, NumberField, SelectField, TickField } from "../../../parts/index.ts";
import { figureText, t } from "../../../parts/words.ts";
import { fieldName, optionName, shownUnit } from "../field-words.ts";
import type { Editing } from "./editing.ts";

export interface SpecFieldProps {
  readonly kind: string;
  readonly name: string;
  readonly field: FieldSpec;
  /** path of the field in the description */
  readonly path: string;
  /** the usual value, shown while nothing else was said */
  readonly usual: string | number | boolean | undefined;
  readonly editing: Editing;
}

const PRECISE = { maximumFractionDigits: 4 };

function noteOf({ field, usual, editing, path }: SpecFieldProps): string | undefined {
  if (usual !== undefined && editing.at(path) === undefined)
    return field.source === "practice" ? t("fleet.edit.source.practice") : field.source;
  if (field.type !== "number") return undefined;
  const text = (value: number) => figureText({ value, unit: shownUnit(field.unit) ?? "" });
  return t("fleet.edit.range", { min: text(field.min), max: text(field.max) });
}

function Control(props: SpecFieldProps) {
  const { kind, name, field, path, editing } = props;
  const value = editing.at(path) ?? props.usual;
  const words = { label: fieldName(kind, name), note: noteOf(props), error: editing.wrongAt(path) };
  switch (field.type) {
    case "number": {
      const unit = shownUnit(field.unit);
      return (
        <NumberField
          {...words}
          format={PRECISE}
          value={typeof value === "number" ? value : null}
          onChange={(next) => editing.change(path, next)}
          {...(unit === undefined ? {} : { unit })}
        />
      );
    }
    case "choice":
      return (
        <SelectField
          {...words}
          value={typeof value === "string" ? value : null}
          options={field.options.map((each) => ({ value: each, label: optionName(kind, name, each) }))}
          onChange={(next) => editing.change(path, next)}
        />
      );
    case "flag":
      return (
        <TickField value={value === true} onChange={(next) => editing.change(path, next)}>
          {words.label}
        </TickField>
      );
    case "date":
      return (
        <DateField
          {...words}
          value={typeof value === "string" ? value : ""}
          onChange={(next) => editing.change(path, next)}
        />
      );
  }
}

/** One field of something fitted, made from what the registry says of it. */
export function SpecFieldView(props: SpecFieldProps) {
  return (
    <div data-path={props.path}>
      <Control {...props} />
    </div>
  );
}
