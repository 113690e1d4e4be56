import { BadInput, parseWith } from "../base/bad-input.ts";
import { airConditioning } from "./air-conditioning/index.ts";
import { alarms } from "./alarms/index.ts";
import { awning } from "./awning/index.ts";
import { beds } from "./beds/index.ts";
import { bikeRack } from "./bike-rack/index.ts";
import { cab } from "./cab/index.ts";
import { cassetteToilet } from "./cassette-toilet/index.ts";
import { charging } from "./charging/index.ts";
import type { SystemModule, SystemSpec } from "./contract.ts";
import { controlPanel } from "./control-panel/index.ts";
import { cooking } from "./cooking/index.ts";
import { def } from "./def/index.ts";
import { door } from "./door/index.ts";
import { elevatingRoof } from "./elevating-roof/index.ts";
import { freshWater } from "./fresh-water/index.ts";
import { fridge } from "./fridge/index.ts";
import { fuel } from "./fuel/index.ts";
import { garage } from "./garage/index.ts";
import { heating } from "./heating/index.ts";
import { hookUp } from "./hook-up/index.ts";
import { hotWater } from "./hot-water/index.ts";
import { inverter } from "./inverter/index.ts";
import { keys } from "./keys/index.ts";
import { leisureBattery } from "./leisure-battery/index.ts";
import { levelling } from "./levelling/index.ts";
import { lights } from "./lights/index.ts";
import { lpg } from "./lpg/index.ts";
import { seatsBelts } from "./seats-belts/index.ts";
import { solar } from "./solar/index.ts";
import { step } from "./step/index.ts";
import { television } from "./television/index.ts";
import { tractionBattery } from "./traction-battery/index.ts";
import { tyres } from "./tyres/index.ts";
import { wasteWater } from "./waste-water/index.ts";
import { windows } from "./windows/index.ts";

/** Every system that can be fitted: the only list. One line here, one folder beside it. */
export const SYSTEMS = [
  leisureBattery,
  lpg,
  awning,
  heating,
  fridge,
  hookUp,
  charging,
  solar,
  hotWater,
  cooking,
  freshWater,
  wasteWater,
  cassetteToilet,
  fuel,
  def,
  tyres,
  seatsBelts,
  windows,
  keys,
  lights,
  cab,
  alarms,
  step,
  beds,
  elevatingRoof,
  television,
  bikeRack,
  inverter,
  tractionBattery,
  controlPanel,
  levelling,
  door,
  garage,
  airConditioning,
] as const;

type AnyModule = (typeof SYSTEMS)[number];
export type SystemKind = AnyModule["kind"];
/** The parsed spec of a kind. */
export type SpecOf<Kind extends SystemKind> =
  Extract<AnyModule, { readonly kind: Kind }> extends { readonly spec: SystemSpec<infer Spec> }
    ? Spec
    : never;
/** A parsed spec where the kind is known only at run time. */
export type ParsedSpec = Readonly<Record<string, string | number | boolean>>;
/** A module where the kind is known only at run time; give it only what {@link parseSpec} gave for the same kind. */
export type AnySystem = SystemModule<SystemKind, ParsedSpec>;

export const SYSTEM_KINDS: readonly SystemKind[] = SYSTEMS.map(({ kind }) => kind);

const byKind: ReadonlyMap<string, AnyModule> = new Map(SYSTEMS.map((module) => [module.kind, module]));

export function isSystemKind(kind: string): kind is SystemKind {
  return byKind.has(kind);
}

/** The module of a kind; throws on a kind that is not registered. */
export function systemModule(kind: string): AnySystem {
  const module = byKind.get(kind);
  if (module === undefined) throw new RangeError(`no system of kind ${kind}`);
  // the pairing of module and spec is held by parseSpec, which the compiler cannot see across kinds
  return module as unknown as AnySystem;
}

/**
 * Checks the spec of one fitted system against its kind and fills in the defaults.
 * @param path path of the fitted system in the input, e.g. `systems.3`; errors name `systems.3.kind` or `systems.3.spec.ratedAh`
 * @throws BadInput naming each field and what was expected there
 */
export function parseSpec<Kind extends SystemKind>(kind: Kind, spec: unknown, path?: string): SpecOf<Kind>;
export function parseSpec(kind: string, spec: unknown, path?: string): ParsedSpec;
export function parseSpec(kind: string, spec: unknown, path = ""): ParsedSpec {
  const under = path === "" ? "" : `${path}.`;
  if (!isSystemKind(kind)) {
    throw new BadInput([{ path: `${under}kind`, expected: `expected one of ${SYSTEM_KINDS.join(", ")}` }]);
  }
  return parseWith(systemModule(kind).spec.schema, spec, `${under}spec`);
}
