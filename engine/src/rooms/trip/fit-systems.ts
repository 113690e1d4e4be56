import {
  applies,
  type Keeping,
  type PhysicsContext,
  type Running,
  type Setting,
  type StoreShare,
  type SystemPhysics,
} from "../../systems/contract.ts";
import {
  isSystemKind,
  type ParsedSpec,
  parseSpec,
  type SystemKind,
  systemModule,
} from "../../systems/registry.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { type RatedUse, rateUse } from "./rate-use.ts";
import { settlementRank } from "./settlement-order.ts";
import type { UseRates } from "./types.ts";

/** One fitted system as the trip room uses it. */
export interface FittedPhysics {
  readonly id: string;
  readonly kind: SystemKind;
  readonly spec: ParsedSpec;
  readonly physics: SystemPhysics<ParsedSpec>;
  readonly shares: readonly StoreShare[];
  /** measured use that its physics already holds to */
  readonly rates: UseRates;
}

/**
 * The fitted systems that take part in the forecast, in the order of settlement, using as much of each store as
 * the rates say. Throws BadInput that names the field.
 */
export function fitSystems(
  vehicle: VehicleDescription,
  rated: RatedUse = { rates: {}, seed: 0, spread: false },
): readonly FittedPhysics[] {
  const all = vehicle.systems
    .map((fitted, index): FittedPhysics | null => {
      const spec = parseSpec(fitted.kind, fitted.spec, `vehicle.systems.${index}`);
      const { physics } = systemModule(fitted.kind);
      if (!isSystemKind(fitted.kind) || !applies(physics)) return null;
      return {
        id: fitted.id,
        kind: fitted.kind,
        spec,
        physics: rateUse(fitted.kind, physics, rated),
        shares: physics.stores(spec),
        rates: rated.rates,
      };
    })
    .filter((fitted) => fitted !== null);
  // what shares the elements of another appliance comes just before it
  const before = new Map<string, number>(
    elementsOf(all).flatMap(({ kind, kinds }) =>
      kinds.map((sister) => [sister, settlementRank(kind) - 0.5] as const),
    ),
  );
  const rankOf = ({ kind }: FittedPhysics) => before.get(kind) ?? settlementRank(kind);
  return all
    .map((fitted, place) => ({ fitted, place }))
    .sort((a, b) => rankOf(a.fitted) - rankOf(b.fitted) || a.place - b.place)
    .map(({ fitted }) => fitted);
}

/** Systems whose electric elements serve others too, and the kinds of those. */
export function elementsOf(
  systems: readonly FittedPhysics[],
): readonly (Pick<FittedPhysics, "id" | "kind"> & { readonly kinds: readonly string[] })[] {
  return systems.flatMap(({ id, kind, spec, physics }) => {
    const kinds = physics.mains?.(spec, {}).loads.flatMap(({ sameAs }) => sameAs ?? []) ?? [];
    return kinds.length === 0 ? [] : [{ id, kind, kinds }];
  });
}

export interface Started {
  readonly running: readonly Running[];
  readonly keeping: Keeping | null;
}

/** Sets a fitted system to work for one forecast. */
export function startSystem(
  fitted: FittedPhysics,
  context: Omit<PhysicsContext, "setting">,
  setting: Setting | undefined,
): Started {
  const own: PhysicsContext = { ...context, setting: setting ?? {} };
  return {
    running: fitted.physics.start?.(fitted.spec, own) ?? [],
    keeping: fitted.physics.keep?.(fitted.spec, own) ?? null,
  };
}
