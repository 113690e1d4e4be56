import { dateText, has, moneyText, say, t } from "../../parts/words.ts";
import type { Difference, PathStep } from "./differences.ts";

/** `firstCarEntitlement` as "first car entitlement": for a field that has no word of its own. */
const spelled = (name: string): string =>
  name
    .replace(/([a-z])([A-Z0-9])/g, "$1 $2")
    .replaceAll(/[_.]/g, " ")
    .toLowerCase();

function stepText(step: PathStep, list: unknown): string {
  if (typeof step === "number") return String(step + 1);
  if (typeof step === "object") return nameOf(list, step.key);
  // what may be taken along has its own words
  const id = [`meanwhile.field.${step}`, `quoteAbout.${step}`].find(has);
  return id === undefined ? spelled(step) : say(id);
}

type Branch = Readonly<Record<string, unknown>>;
const isBranch = (value: unknown): value is Branch =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const ownName = (value: unknown): string | undefined => {
  if (!isBranch(value)) return undefined;
  const { name, place } = value;
  const own = isBranch(place) ? place.name : name;
  return typeof own === "string" && own !== "" ? own : undefined;
};

/** One of a list as a person calls it; one that has an id alone is called by its place. */
function nameOf(list: unknown, key: string): string {
  if (!Array.isArray(list)) return key;
  const place = list.findIndex((each) => isBranch(each) && (each.id === key || ownName(each) === key));
  const one: unknown = list[place];
  return (
    ownName(one) ?? (isBranch(one) && typeof one.kind === "string" ? spelled(one.kind) : String(place + 1))
  );
}

const within = (value: unknown, step: PathStep): unknown => {
  if (typeof step === "object")
    return Array.isArray(value)
      ? value.find((each) => isBranch(each) && (each.id === step.key || ownName(each) === step.key))
      : undefined;
  if (typeof step === "number") return Array.isArray(value) ? value[step] : undefined;
  return isBranch(value) ? value[step] : undefined;
};

/** Where two differ, as a person would say it: "stops, Ambleford, leave". `wholes`: where names are looked up. */
export function placeText(path: readonly PathStep[], wholes: readonly unknown[]): string {
  let at = wholes;
  return path
    .map((step) => {
      const list = at.find((each) => within(each, step) !== undefined);
      const text = stepText(step, list);
      at = at.map((each) => within(each, step));
      return text;
    })
    .join(", ");
}

const LOCAL = /^\d{4}-\d\d-\d\dT\d\d:\d\d$/;
const DAY = /^\d{4}-\d\d-\d\d$/;

/** A value in plain words; what has no name is counted. */
export function valueText(value: unknown, path: readonly PathStep[] = []): string {
  if (value === null && path[0] === "hours") return t("opening.closed");
  if (value === undefined || value === null || value === "") return t("meanwhile.nothing");
  if (typeof value === "boolean") return t(value ? "meanwhile.yes" : "meanwhile.no");
  if (typeof value === "number")
    return path.some((step) => typeof step === "string" && /pence/i.test(step))
      ? moneyText({ currency: "GBP", pence: value })
      : String(value);
  if (typeof value === "string") return textOf(value, path);
  if (Array.isArray(value))
    return value.length === 0
      ? t("meanwhile.nothing")
      : value.map((each) => valueText(each, path)).join("; ");
  return (path[0] === "hours" ? undefined : ownName(value)) ?? inside(value as Branch); // neither null, list nor bare: a branch
}

/** Words of a choice stand under these groups, by the field's name. */
const GROUPS: Readonly<Record<string, string>> = {
  acts: "act",
  kind: "people",
  made: "markClass",
  todo: "settling.todo",
};

function textOf(value: string, path: readonly PathStep[]): string {
  if (LOCAL.test(value)) return dateText(value, "dayTime");
  if (DAY.test(value)) return dateText(value, "full");
  const field = path.findLast((step) => typeof step === "string");
  const id = `${GROUPS[String(field)] ?? "meanwhile.value"}.${value}`;
  return has(id) ? say(id) : value;
}

function inside(value: Branch): string {
  const said = Object.entries(value).filter(([name, each]) => name !== "id" && each !== undefined);
  if (said.length === 0) return t("meanwhile.nothing");
  return said.map(([name, each]) => `${stepText(name, undefined)} ${valueText(each, [name])}`).join(", ");
}

/** The same place named for two people: who changed it. */
export const changedByText = ({ changedBy }: Difference): string =>
  t("meanwhile.changedBy", { who: changedBy });
