import {
  type BodyStyle,
  type DraftDescription,
  findVehicleProblems,
  isSystemKind,
  STARTING_POINTS,
  sketchVehicle,
  specDefaults,
  type VehicleDescription,
} from "@setfair/engine";

export const STEPS = ["vehicle", "masses", "fitted", "details", "check"] as const;
export type Step = (typeof STEPS)[number];

export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };
type Branch = Readonly<Record<string, unknown>>;
export type DraftSystem = NonNullable<DraftDescription["systems"]>[number];

/** A vehicle as it is being described. Kept in the tab until it was sent. */
export interface VehicleDraft {
  readonly step: Step;
  readonly description: DraftDescription;
  /** systems that were unticked, by kind: ticked again they come back as they were */
  readonly aside: Readonly<Record<string, readonly DraftSystem[]>>;
  readonly vehicleClass: string | null;
  readonly maxDogs: number | null;
  /** the reader has seen the check page: gaps are shown at their fields from then on */
  readonly isTried: boolean;
}

const isBranch = (value: unknown): value is Branch => typeof value === "object" && value !== null;

/** The value at a path like `masses.axleMaxKg.front`; undefined where there is none. */
export function valueAt(from: unknown, path: string): unknown {
  return path.split(".").reduce<unknown>((value, name) => (isBranch(value) ? value[name] : undefined), from);
}

function put(value: unknown, names: readonly string[], next: unknown): unknown {
  const [name, ...rest] = names;
  if (name === undefined) return next;
  if (Array.isArray(value))
    return value.map((each, k) => (String(k) === name ? put(each, rest, next) : each));
  const branch = isBranch(value) ? value : {};
  const inner = put(branch[name], rest, next);
  const { [name]: _, ...others } = branch;
  // an empty answer is no answer: the field is left out, not sent as nothing
  return inner === undefined || inner === null ? others : { ...branch, [name]: inner };
}

/** The description with another value at a path; null takes the field out. */
export function withValue(from: DraftDescription, path: string, value: unknown): DraftDescription {
  return put(from, path.split("."), value) as DraftDescription; // a branch stays a branch
}

const fresh = (description: DraftDescription): VehicleDraft => ({
  step: "vehicle",
  description,
  aside: {},
  vehicleClass: null,
  maxDogs: null,
  isTried: false,
});

const USUAL_BASIS = { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false };

/** Begins with what is usual for a body style; the masses are left to the plate. */
export function startFromStyle(bodyStyle: BodyStyle, today: string): VehicleDraft {
  const { dimensions, body, fuel, category, litresPer100Km, kinds } = STARTING_POINTS[bodyStyle];
  return fresh({
    id: newId(),
    name: "",
    registration: "",
    bodyStyle,
    validFrom: today,
    fuel,
    category,
    emissionClass: "Euro 6",
    dimensions,
    masses: { miroBasis: USUAL_BASIS, options: [] },
    body,
    consumption: { litresPer100Km },
    systems: kinds.filter(isSystemKind).map((kind) => ({ id: kind, kind, spec: {} })),
  });
}

/** Begins as a sister: everything but name, number, and the days. */
export function startFromSister(sister: VehicleDescription, today: string): VehicleDraft {
  const { firstRegistered: _, ...rest } = sister;
  return fresh({ ...rest, id: newId(), name: "", registration: "", validFrom: today });
}

/** Begins with whatever a file holds; what is wrong in it is told at its field, nothing is thrown away. */
export function startFromFile(json: Branch): VehicleDraft {
  const systems = Array.isArray(json.systems) ? json.systems.map(asSystem) : [];
  return { ...fresh({ ...json, id: newId(), systems }), isTried: true };
}

function asSystem(system: unknown, k: number): DraftSystem {
  const of = isBranch(system) ? system : {};
  const text = (value: unknown, otherwise: string) => (typeof value === "string" ? value : otherwise);
  return {
    ...of,
    id: text(of.id, `system${k + 1}`),
    kind: text(of.kind, ""),
    spec: isBranch(of.spec) ? of.spec : {},
  };
}

/** Begins a new version of a vehicle, from today on. */
export function startVersion(
  description: VehicleDescription,
  vehicleClass: string,
  maxDogs: number,
  today: string,
): VehicleDraft {
  return { ...fresh({ ...description, validFrom: today }), vehicleClass, maxDogs };
}

/** An id of the server's kind that nobody else makes. */
const newId = (): string => `v-${crypto.randomUUID().slice(0, 18)}`;

export const systemsOf = ({ description }: VehicleDraft): readonly DraftSystem[] => description.systems ?? [];

/** Fits a kind, or takes it out; what was answered about it is kept aside. */
export function toggleKind(draft: VehicleDraft, kind: string, isFitted: boolean): VehicleDraft {
  const systems = systemsOf(draft);
  const others = systems.filter((system) => system.kind !== kind);
  const own = systems.filter((system) => system.kind === kind);
  const back = draft.aside[kind] ?? [{ id: freeId(kind, others), kind, spec: {} }];
  return {
    ...draft,
    aside: isFitted ? draft.aside : { ...draft.aside, [kind]: own },
    description: { ...draft.description, systems: isFitted ? [...others, ...back] : others },
  };
}

function freeId(kind: string, systems: readonly DraftSystem[]): string {
  const taken = new Set(systems.map(({ id }) => id));
  let id = kind;
  for (let k = 2; taken.has(id); k++) id = `${kind}${k}`;
  return id;
}

/** One more of a kind that is fitted already: a second tank, a second heater. */
export function addAnother(draft: VehicleDraft, kind: string): VehicleDraft {
  const systems = systemsOf(draft);
  const added = { id: freeId(kind, systems), kind, spec: {} };
  return { ...draft, description: { ...draft.description, systems: [...systems, added] } };
}

export function removeSystem(draft: VehicleDraft, index: number): VehicleDraft {
  const systems = systemsOf(draft).filter((_, k) => k !== index);
  return { ...draft, description: { ...draft.description, systems } };
}

/** The description as it would be kept: the usual values stand where nothing else was said. */
export function wholeOf({ description }: VehicleDraft): DraftDescription {
  const { dimensions } = sketchVehicle(description);
  return {
    ...description,
    systems: (description.systems ?? []).map((system) =>
      isSystemKind(system.kind)
        ? {
            ...system,
            spec: { ...specDefaults(system.kind, dimensions, { ...system.spec }), ...system.spec },
          }
        : system,
    ),
  };
}

export interface DraftProblem {
  readonly path: string;
  readonly expected: string;
  /** nothing is given there yet */
  readonly isGap: boolean;
}

/** What keeps a draft from being a description; a branch that is missing whole is told as its fields. */
export function problemsOf(draft: VehicleDraft, fieldPaths: readonly string[]): readonly DraftProblem[] {
  const whole = wholeOf(draft);
  return findVehicleProblems(whole).flatMap(({ path, expected }): readonly DraftProblem[] => {
    const value = valueAt(whole, path);
    if (path === "" || (value !== undefined && value !== "")) return [{ path, expected, isGap: false }];
    const inside = fieldPaths.filter((each) => each.startsWith(`${path}.`));
    const paths = inside.length > 0 ? inside : [path];
    return paths.map((each) => ({ path: each, expected, isGap: true }));
  });
}

/** Names that the file holds and the description does not know; each can be left out. */
export function unknownNames({ expected }: DraftProblem): readonly string[] {
  return /unrecogni[sz]ed key/i.test(expected)
    ? [...expected.matchAll(/"([^"]+)"/g)].map((match) => match[1] ?? "")
    : [];
}

export function leaveOut(draft: VehicleDraft, problem: DraftProblem): VehicleDraft {
  const under = problem.path === "" ? "" : `${problem.path}.`;
  const description = unknownNames(problem).reduce(
    (from, name) => withValue(from, `${under}${name}`, null),
    draft.description,
  );
  return { ...draft, description };
}

export function stepOf(path: string): Step {
  if (path.startsWith("masses")) return "masses";
  return path.startsWith("systems") ? "details" : "vehicle";
}
