import type * as z from "zod";
import { globalRegistry } from "zod";
import { may, type Role } from "../auth/roles.ts";
import { FIELD_RIGHTS, type FieldRight, GATE_RIGHTS } from "../auth/who-sees-what.ts";
import type { Operation } from "./operation.ts";

/** Text `finding.gate.atDesk`: something is open at a gate whose findings are not for whoever asks. */
const AT_DESK = "gate.atDesk";

type Fields = Record<string, unknown>;
/** @param isOfTheDay the hire that stands round the value is one of the day */
type Show = (value: unknown, isOfTheDay: boolean) => unknown;

/**
 * Cuts an answer down to what a role is shown, by the names of its schemas. Holders of a link and of a token come without
 * a role: their answers are made for them alone.
 */
export function showByRight({ answer }: Operation): (value: unknown, role: Role | null) => unknown {
  const shows = new Map<Role, Show | null>();
  return (value, role) => {
    if (role === null || answer === undefined) return value;
    let show = shows.get(role);
    if (show === undefined) {
      show = showOf(answer, role);
      shows.set(role, show);
    }
    return show === null ? value : show(value, false);
  };
}

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Null where nothing within is kept from the role, so that such an answer is not walked through at all. */
function showOf(schema: z.core.$ZodType, role: Role): Show | null {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "object":
      return objectShow(schema, def.shape, role);
    case "array":
      return arrayShow(showOf(def.element, role));
    case "record":
      return recordShow(showOf(def.valueType, role));
    case "union":
      return all(def.options.map((option) => showOf(option, role)));
    case "optional":
    case "nullable":
    case "default":
    case "readonly":
      return showOf(def.innerType, role);
    default:
      return null;
  }
}

function all(shows: readonly (Show | null)[]): Show | null {
  const some = shows.filter((show) => show !== null);
  if (some.length === 0) return null;
  return (value, isOfTheDay) => some.reduce((shown, show) => show(shown, isOfTheDay), value);
}

function arrayShow(show: Show | null): Show | null {
  if (show === null) return null;
  return (value, isOfTheDay) =>
    Array.isArray(value) ? onceAtDesk(value.map((each) => show(each, isOfTheDay))) : value;
}

function recordShow(show: Show | null): Show | null {
  if (show === null) return null;
  return (value, isOfTheDay) =>
    isFields(value)
      ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, show(each, isOfTheDay)]))
      : value;
}

function objectShow(
  schema: z.core.$ZodType,
  shape: Readonly<Record<string, z.core.$ZodType>>,
  role: Role,
): Show | null {
  const name = globalRegistry.get(schema)?.id ?? "";
  const rights = Object.entries(FIELD_RIGHTS[name] ?? {}).filter(([, right]) => !may(role, right.may));
  const within = Object.entries(shape).flatMap(([field, inner]) => {
    const show = showOf(inner, role);
    return show === null ? [] : [[field, show] as const];
  });
  const atGate = gateShow(name, role);
  if (rights.length === 0 && within.length === 0 && atGate === null) return null;
  return (value, isOfTheDay) => {
    if (!isFields(value)) return value;
    const day = typeof value.ofTheDay === "boolean" ? value.ofTheDay : isOfTheDay;
    const shown: Fields = { ...value };
    for (const [field, right] of rights) if (!isShown(right, role, day)) delete shown[field];
    for (const [field, show] of within) if (field in shown) shown[field] = show(shown[field], day);
    return atGate === null ? shown : atGate(shown);
  };
}

const isShown = ({ onTheDay }: FieldRight, role: Role, isOfTheDay: boolean): boolean =>
  onTheDay !== undefined && isOfTheDay && may(role, onTheDay);

/** How a finding, an entry of a gate and a reason of the glass are cut; null where the role may see every gate. */
function gateShow(name: string, role: Role): ((value: Fields) => Fields) | null {
  const hidden = new Set(
    Object.entries(GATE_RIGHTS).flatMap(([gate, act]) => (may(role, act) ? [] : [gate])),
  );
  if (hidden.size === 0) return null;
  switch (name) {
    case "Finding":
      return (finding) => (hidden.has(String(finding.gate)) ? plain(finding) : finding);
    case "GlassReason":
      return ({ gate, ...reason }) =>
        hidden.has(String(gate)) ? { gate, code: AT_DESK } : { gate, ...reason };
    case "GateFinding":
      return (entry) =>
        isAtDesk(entry.finding) && isFields(entry.override)
          ? { ...entry, override: { ...entry.override, reason: undefined } }
          : entry;
    default:
      return null;
  }
}

const plain = ({ gate, severity, basis }: Fields): Fields => ({
  code: AT_DESK,
  gate,
  severity,
  basis,
  facts: {},
  sources: [],
  mends: [],
});

const isAtDesk = (value: unknown): value is Fields => isFields(value) && value.code === AT_DESK;

/** Several findings of a gate that are not shown read alike: one of each severity stands for them. */
function onceAtDesk(values: readonly unknown[]): readonly unknown[] {
  const seen = new Set<string>();
  return values.filter((value) => {
    const finding = isFields(value) && "finding" in value ? value.finding : value;
    if (!isAtDesk(finding)) return true;
    const key = `${String(finding.gate)} ${String(finding.severity)}`;
    return !seen.has(key) && seen.add(key);
  });
}
