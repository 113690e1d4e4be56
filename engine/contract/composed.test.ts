import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseCards } from "../src/rooms/briefing/choose-cards.ts";
import { composeWalkRound } from "../src/rooms/condition/compose-walk-round.ts";
import { symptomsOf } from "../src/rooms/diagnosis/symptoms-of.ts";
import { applies, type Check } from "../src/systems/contract.ts";
import { parseSpec, SYSTEM_KINDS, systemModule } from "../src/systems/registry.ts";
import type { FittedSystem, VehicleDescription } from "../src/vehicle/description.ts";
import { anyFitted, anySituation, anySystems } from "./arbitrary.ts";
import { argumentsOf, TEXTS } from "./words.ts";

const dimensions = { lengthM: 6, widthM: 2.05, heightM: 2.8, wheelbaseM: 3.8, rearOverhangM: 1.2 };
const withSystems = (systems: readonly FittedSystem[]) =>
  ({ id: "any", dimensions, systems: [...systems] }) as Pick<
    VehicleDescription,
    "id" | "dimensions" | "systems"
  > as VehicleDescription;
const checksOf = (systems: readonly FittedSystem[]) =>
  (["out", "back"] as const).flatMap((when) =>
    composeWalkRound(withSystems(systems), when).steps.flatMap(({ checks }) => checks),
  );

/** What the yard and the workshop look at besides. */
const laterChecksOf = (systems: readonly FittedSystem[]): readonly (Check & { readonly kindOf: string })[] =>
  systems.flatMap(({ kind, spec }) => {
    const { checks } = systemModule(kind);
    if (!applies(checks)) return [];
    return checks
      .checks(parseSpec(SYSTEM_KINDS.find((known) => known === kind)!, spec))
      .filter(({ when }) => when.includes("turnaround") || when.includes("due"))
      .map((check) => ({ ...check, kindOf: kind }));
  });

/** The faults of all systems but one, without what they say of that one. */
const faultsApartFrom = (kind: string, systems: readonly FittedSystem[]) =>
  symptomsOf({ systems: [...systems] })
    .filter(({ systemKind }) => systemKind !== kind)
    .flatMap(({ symptom }) => {
      const apart = ({ mentions }: { readonly mentions?: readonly string[] }) =>
        !(mentions ?? []).includes(kind);
      const causes = symptom.causes
        .filter(apart)
        // a cause goes on only to a fault that the vehicle can have
        .map(({ leadsTo, ...cause }) => (leadsTo?.startsWith(`${kind}.`) ? cause : { ...cause, leadsTo }));
      if (causes.length === 0) return [];
      const left = new Set(causes.map(({ id }) => id));
      const checks = symptom.checks
        .filter(apart)
        .map((check) => ({ ...check, causes: check.causes.filter((id) => left.has(id)) }))
        .filter((check) => check.causes.length > 0);
      const kept = new Set(checks.map(({ id }) => id));
      return [
        {
          ...symptom,
          causes,
          checks: checks.map((check) => ({ ...check, after: check.after.filter((id) => kept.has(id)) })),
        },
      ];
    });

/** Systems, one of them twice over: as it is and otherwise. */
const oneChanged = anySystems
  .filter((systems) => systems.length > 0)
  .chain((systems) =>
    fc.nat(systems.length - 1).chain((at) =>
      fc
        .oneof(anyFitted(SYSTEM_KINDS.find((kind) => kind === systems[at]!.kind)!), fc.constant(null))
        .map((other) => ({
          kind: systems[at]!.kind,
          before: systems,
          after: systems.flatMap((system, index) =>
            index === at ? (other === null ? [] : [other]) : [system],
          ),
        })),
    ),
  );

describe("what is composed from a description", () => {
  it("no card mentions a thing that is not fitted", () => {
    fc.assert(
      fc.property(anySystems, anySituation, (systems, situation) => {
        const fitted = new Set(systems.map(({ kind }) => kind));
        for (const { card } of chooseCards(withSystems(systems), situation)) {
          for (const ending of ["title", "do", "caution", "ask", "answer"]) {
            for (const name of argumentsOf(TEXTS.get(`card.${card.id}.${ending}`) ?? "")) {
              if (name.startsWith("thing_")) expect(fitted).toContain(name.slice(6));
              else expect(Object.keys(card.facts)).toContain(name);
            }
          }
        }
      }),
    );
  });

  it("vehicles that differ in one system have briefings that differ only where it matters", () => {
    fc.assert(
      fc.property(oneChanged, anySituation, ({ kind, before, after }, situation) => {
        const elsewhere = (systems: readonly FittedSystem[]) =>
          chooseCards(withSystems(systems), situation)
            .filter(({ card, systemKind }) => systemKind !== kind && !card.mentions.includes(kind))
            .map(({ card }) => card);
        expect(elsewhere(after)).toEqual(elsewhere(before));
      }),
    );
  });

  it("vehicles that differ in one system have walk-rounds that differ only in its checks", () => {
    fc.assert(
      fc.property(oneChanged, ({ kind, before, after }) => {
        const elsewhere = (systems: readonly FittedSystem[]) =>
          checksOf(systems).filter(({ systemKind }) => systemKind !== kind);
        expect(elsewhere(after)).toEqual(elsewhere(before));
        const later = (systems: readonly FittedSystem[]) =>
          laterChecksOf(systems).filter(({ kindOf }) => kindOf !== kind);
        expect(later(after)).toEqual(later(before));
      }),
    );
  });

  it("vehicles that differ in one system have faults that differ only where it matters", () => {
    fc.assert(
      fc.property(oneChanged, ({ kind, before, after }) => {
        expect(faultsApartFrom(kind, after)).toEqual(faultsApartFrom(kind, before));
      }),
    );
  });

  it("no check, cause or step speaks of a thing that is not fitted", () => {
    fc.assert(
      fc.property(anySystems, (systems) => {
        const fitted = new Set<string>(systems.map(({ kind }) => kind));
        const ids = symptomsOf({ systems: [...systems] }).flatMap(({ symptom: { id, causes, checks } }) => [
          `symptom.${id}`,
          ...causes.map((cause) => `cause.${cause.id}`),
          ...checks.map((check) => `faultCheck.${check.id}`),
        ]);
        const asked = [...checksOf(systems), ...laterChecksOf(systems)].map(({ id }) => `check.${id}`);
        for (const id of [...ids, ...asked]) {
          for (const name of argumentsOf(TEXTS.get(id) ?? "")) {
            expect(name, id).toMatch(/^thing_/);
            expect(fitted, id).toContain(name.slice("thing_".length));
          }
        }
      }),
    );
  });

  it("taking a system out takes its own cards and checks out", () => {
    fc.assert(
      fc.property(anySystems, anySituation, fc.constantFrom(...SYSTEM_KINDS), (systems, situation, kind) => {
        const without = systems.filter((system) => system.kind !== kind);
        const cards = chooseCards(withSystems(without), situation);
        expect(
          cards.filter(({ card }) => card.id.startsWith(`${kind}.`) || card.mentions.includes(kind)),
        ).toEqual([]);
        expect(checksOf(without).filter(({ id }) => id.startsWith(`${kind}.`))).toEqual([]);
        const faults = symptomsOf({ systems: [...without] });
        expect(faults.filter(({ symptom: { id } }) => id.startsWith(`${kind}.`))).toEqual([]);
      }),
    );
  });
});
