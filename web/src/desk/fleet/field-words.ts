import { isSystemKind, systemModule } from "@setfair/engine";
import { dateText, figureText, has, say, t } from "../../parts/words.ts";

/** `maxKgEach` as "max kg each": shown where a field has no words yet. */
const spelled = (name: string): string =>
  name.replace(
    /([a-z0-9])([A-Z])/g,
    (_, before: string, after: string) => `${before} ${after.toLowerCase()}`,
  );

const firstOf = (ids: readonly string[], otherwise: string): string => {
  const id = ids.find(has);
  return id === undefined ? otherwise : say(id);
};

export const thingName = (kind: string): string => firstOf([`thing.${kind}`], spelled(kind));

/** What a field of a fitted system is called; of the vehicle itself where the kind is null. */
export function fieldName(kind: string | null, field: string): string {
  const last = field.split(".").at(-1) ?? field;
  const own = kind === null ? [`field.vehicle.${field}`] : [`field.${kind}.${field}`];
  return firstOf([...own, `field.${last}`], spelled(last));
}

export const optionName = (kind: string | null, field: string, option: string): string =>
  firstOf(
    kind === null
      ? [`body.style.${option}`, `option.${option}`]
      : [`option.${kind}.${field}.${option}`, `option.${option}`],
    spelled(option),
  );

/** The unit that stands after the label; counts and shares have none. */
export const shownUnit = (unit: string): string | undefined =>
  unit === "count" || unit === "–" || unit === "-" ? undefined : unit;

function unitOf(kind: string | null, field: string): string {
  if (kind !== null && isSystemKind(kind)) {
    const spec = systemModule(kind).spec.fields[field];
    return spec?.type === "number" ? (shownUnit(spec.unit) ?? "") : "";
  }
  return /Kg(\.|$)|axleMaxKg/.test(field) ? "kg" : /M$/.test(field) ? "m" : "";
}

/** A value as people say it: with its unit, a choice by its name. */
export function valueText(kind: string | null, field: string, value: unknown): string {
  if (value === null || value === undefined || value === "") return t("fleet.change.nothing");
  if (typeof value === "boolean") return t(value ? "parts.yes" : "parts.no");
  if (typeof value === "number") return figureText({ value, unit: unitOf(kind, field) });
  const text = String(value);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) ? dateText(text, "full") : optionName(kind, field, text);
}

/** The name of whatever a path of the description leads to. */
export function pathName(path: string, kindAt: (index: number) => string | undefined): string {
  const system = /^systems\.(\d+)(?:\.spec)?(?:\.(.+))?$/.exec(path);
  if (system !== null) {
    const kind = kindAt(Number(system[1])) ?? "";
    const thing = thingName(kind);
    return system[2] === undefined || system[2] === "kind"
      ? thing
      : t("fleet.edit.fieldOf", { thing, field: fieldName(kind, system[2]) });
  }
  const option = /^masses\.options\.(\d+)(?:\.(.+))?$/.exec(path);
  if (option !== null)
    return t("fleet.edit.optionAt", { n: Number(option[1]) + 1, field: fieldName(null, option[2] ?? "") });
  return path === "" ? t("fleet.edit.whole") : fieldName(null, path);
}
