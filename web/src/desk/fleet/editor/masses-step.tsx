import type { ReactNode } from "react";
import { Button, NumberField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { fieldName } from "../field-words.ts";
import type { Editing } from "./editing.ts";
import { OwnFields } from "./own-field.tsx";
import { BASIS, PLATE, RUNNING } from "./vehicle-fields.ts";

const PRECISE = { maximumFractionDigits: 3 };

/** From the plate and the certificate; a weighbridge ticket comes later, at the vehicle's page. */
export function MassesStep({ editing }: { readonly editing: Editing }) {
  return (
    <>
      <section className="card stack">
        <h3>{t("fleet.edit.plate")}</h3>
        <p className="quiet">{t("fleet.edit.massCaution")}</p>
        <OwnFields fields={PLATE} editing={editing} />
      </section>
      <section className="card stack">
        <h3>{t("fleet.edit.running")}</h3>
        <p className="quiet">{t("fleet.edit.runningNote")}</p>
        <OwnFields fields={RUNNING} editing={editing} />
        <details>
          <summary className="fold">{t("fleet.edit.basis")}</summary>
          <OwnFields fields={BASIS} editing={editing} />
        </details>
      </section>
      <Options editing={editing} />
    </>
  );
}

interface Option {
  readonly name?: string;
  readonly massKg?: number;
  readonly behindFrontAxleM?: number;
}

const optionsOf = (editing: Editing): readonly Option[] => {
  const options = editing.at("masses.options");
  return Array.isArray(options) ? options : [];
};

function Options({ editing }: { readonly editing: Editing }) {
  const options = optionsOf(editing);
  const put = (next: readonly Option[]) => editing.change("masses.options", next);
  const change = (at: number, option: Option) => put(options.map((each, k) => (k === at ? option : each)));
  return (
    <section className="card stack">
      <h3>{t("fleet.edit.options")}</h3>
      <p className="quiet">{t("fleet.edit.optionsNote")}</p>
      {options.map((option, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: fittings have no id of their own and never change places
        <OptionFields key={k} option={option} at={k} editing={editing} onChange={(next) => change(k, next)}>
          <Button look="quiet" onPress={() => put(options.filter((_, each) => each !== k))}>
            {t("fleet.edit.removeOption", { n: k + 1 })}
          </Button>
        </OptionFields>
      ))}
      <div>
        <Button onPress={() => put([...options, { name: "" }])}>{t("fleet.edit.addOption")}</Button>
      </div>
    </section>
  );
}

interface OptionFieldsProps {
  readonly option: Option;
  readonly at: number;
  readonly editing: Editing;
  readonly onChange: (option: Option) => void;
  readonly children: ReactNode;
}

function OptionFields({ option, at, editing, onChange, children }: OptionFieldsProps) {
  const path = (name: string) => `masses.options.${at}.${name}`;
  const number = (name: "massKg" | "behindFrontAxleM", unit: string) => (
    <div data-path={path(name)}>
      <NumberField
        label={fieldName(null, name)}
        unit={unit}
        format={PRECISE}
        value={option[name] ?? null}
        error={editing.wrongAt(path(name))}
        onChange={(value) => {
          const { [name]: _, ...rest } = option;
          onChange(value === null ? rest : { ...rest, [name]: value });
        }}
      />
    </div>
  );
  return (
    <fieldset className="editor-option">
      <legend className="visually-hidden">{t("fleet.edit.option", { n: at + 1 })}</legend>
      <div className="sheet-fields">
        <div data-path={path("name")}>
          <TextField
            label={fieldName(null, "masses.options.name")}
            value={option.name ?? ""}
            autoFocus={option.name === "" && option.massKg === undefined}
            error={editing.wrongAt(path("name"))}
            onChange={(name) => onChange({ ...option, name })}
          />
        </div>
        {number("massKg", "kg")}
        {number("behindFrontAxleM", "m")}
      </div>
      {children}
    </fieldset>
  );
}
