import type { SystemBriefing } from "./contract-briefing.ts";
import type { SystemChecks } from "./contract-checks.ts";
import type { SystemFaults } from "./contract-faults.ts";
import type { SystemPhysics } from "./contract-physics.ts";
import type { SystemSpec } from "./contract-spec.ts";

// The one door to the contract: what each of the files says stands in a file of its own.
export * from "./contract-briefing.ts";
export type * from "./contract-checks.ts";
export type * from "./contract-faults.ts";
export type * from "./contract-mains.ts";
export type * from "./contract-physics.ts";
export * from "./contract-spec.ts";
export type * from "./contract-step.ts";

/**
 * The systems' contract. Each `systems/<kind>/` has the same files: spec, physics, briefing, checks,
 * faults, index. A file that does not apply exports `{ notApplicable: 'why' }`.
 * Texts are message ids; the words live in `words/src/en/systems/<kind>.json`.
 */
export interface NotApplicable {
  readonly notApplicable: string;
}

export interface SystemModule<Kind extends string, Spec> {
  readonly kind: Kind;
  readonly spec: SystemSpec<Spec>;
  readonly physics: SystemPhysics<Spec> | NotApplicable;
  readonly briefing: SystemBriefing<Spec> | NotApplicable;
  readonly checks: SystemChecks<Spec> | NotApplicable;
  readonly faults: SystemFaults<Spec> | NotApplicable;
}

/** Keeps the kind's literal type and the spec's type together. */
export function defineSystem<const Kind extends string, Spec>(
  module: SystemModule<Kind, Spec>,
): SystemModule<Kind, Spec> {
  return module;
}

export function applies<T extends object>(part: T | NotApplicable): part is T {
  return !("notApplicable" in part);
}
