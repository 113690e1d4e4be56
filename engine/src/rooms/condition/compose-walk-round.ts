import { applies, VIEWS } from "../../systems/contract.ts";
import { parseSpec, systemModule } from "../../systems/registry.ts";
import type { ComposeWalkRound, WalkRoundCheck } from "./types.ts";

/**
 * The walk-round of a vehicle, out or back: the checks that its fitted systems ask for, view by view in the
 * fixed order, so that both rounds go the same way with the same camera positions. A check id that two systems
 * of one kind ask for stands once.
 */
export const composeWalkRound: ComposeWalkRound = (vehicle, when) => {
  const all = vehicle.systems.flatMap(({ id, kind, spec }, index): WalkRoundCheck[] => {
    const { checks } = systemModule(kind);
    if (!applies(checks)) return [];
    return checks
      .checks(parseSpec(kind, spec, `systems.${index}`))
      .filter((check) => check.when.includes(when))
      .map((check) => ({ ...check, systemId: id, systemKind: kind }));
  });
  const once = all.filter((check, k) => all.findIndex(({ id }) => id === check.id) === k);
  return {
    vehicleId: vehicle.id,
    when,
    steps: VIEWS.map((view) => ({ view, checks: once.filter((check) => check.view === view) })),
  };
};
