import { describe, expect, it } from "vitest";
import { SYSTEM_KINDS, systemModule } from "../systems/registry.ts";
import { STARTING_POINTS } from "./body-styles.ts";
import { deriveVehicle } from "./derive.ts";
import { BODY_STYLES } from "./description.ts";
import { diffDescriptions } from "./diff.ts";
import { findVehicleProblems } from "./find-problems.ts";
import { deriveDraft, sketchVehicle } from "./sketch.ts";
import { specDefaults } from "./spec-defaults.ts";
import { systemGroups } from "./system-groups.ts";
import { panelVan } from "./test-vehicles.ts";

describe("starting the description of a vehicle", () => {
  it.each(BODY_STYLES)("%s starts with dimensions that fit together", (style) => {
    const { lengthM, wheelbaseM, rearOverhangM } = STARTING_POINTS[style].dimensions;
    expect(wheelbaseM + rearOverhangM).toBeLessThan(lengthM);
  });

  it("the rear wheels stand on the vehicle's own wheelbase, and nothing is placed behind the vehicle", () => {
    const { dimensions } = STARTING_POINTS.elevatingRoofCampervan;
    for (const kind of SYSTEM_KINDS) {
      const { fields } = systemModule(kind).spec;
      for (const [name, value] of Object.entries(specDefaults(kind, dimensions))) {
        const field = fields[name];
        if (field?.type !== "number" || field.alongVehicle !== true) continue;
        if (field.follows === "wheelbaseM") expect(value, `${kind}.${name}`).toBe(dimensions.wheelbaseM);
        if (field.default !== undefined && field.default <= 5)
          expect(value, `${kind}.${name}`).toBeLessThanOrEqual(
            dimensions.wheelbaseM + dimensions.rearOverhangM,
          );
      }
    }
  });

  it("what is usual hangs on a choice made in the same system", () => {
    const { dimensions } = STARTING_POINTS.campervan;
    expect(specDefaults("leisureBattery", dimensions, { chemistry: "agm" }).usableShare).toBe(0.5);
    expect(specDefaults("leisureBattery", dimensions, { chemistry: "lfp" }).usableShare).toBe(0.9);
  });

  it("every registered kind is in one group, once", () => {
    const kinds = systemGroups().flatMap((group) => group.kinds);
    expect([...kinds].sort()).toEqual([...SYSTEM_KINDS].sort());
  });
});

describe("a description that is not whole yet", () => {
  it("tells every gap at once, inside the fitted systems too", () => {
    const paths = findVehicleProblems({ name: "Half", systems: [{ id: "t", kind: "tyres", spec: {} }] }).map(
      ({ path }) => path,
    );
    expect(paths).toEqual(
      expect.arrayContaining(["masses", "registration", "systems.0.spec.loadIndexFront"]),
    );
    expect(findVehicleProblems(panelVan())).toEqual([]);
  });

  it("can be drawn whatever is missing", () => {
    expect(sketchVehicle({}).dimensions.lengthM).toBe(5.99);
    const systems = SYSTEM_KINDS.map((kind) => ({ id: kind, kind, spec: {} }));
    expect(sketchVehicle({ systems }).systems).toHaveLength(SYSTEM_KINDS.length);
  });

  it("gives the figures that are known and none that is not", () => {
    const { masses, dimensions } = panelVan();
    const without = deriveDraft({ dimensions, masses: { mamKg: 3500 }, systems: [] });
    expect(without.payload).toBeNull();
    expect(without.heightM?.value).toBe(2.65);
    expect(deriveDraft({ dimensions, masses, systems: [] }).payload?.value).toBe(525);
    expect(deriveDraft({ ...panelVan() })).toEqual(deriveVehicle(panelVan()));
  });
});

describe("what changed between two versions", () => {
  it("tells fields, and systems fitted and removed", () => {
    const before = panelVan();
    const after = panelVan({
      validFrom: "2026-01-01",
      registration: "TE58 VAN",
      systems: [
        ...before.systems
          .filter(({ kind }) => kind !== "lpg")
          .map((each) => (each.id === "water" ? { ...each, spec: { ...each.spec, litres: 110 } } : each)),
        { id: "awning", kind: "awning", spec: {} },
      ],
    });
    expect(diffDescriptions(before, after)).toEqual([
      { what: "field", field: "registration", kind: null, from: "TE57 VAN", to: "TE58 VAN" },
      { what: "system", kind: "lpg", change: "removed" },
      { what: "field", field: "litres", kind: "freshWater", from: 95, to: 110 },
      { what: "system", kind: "awning", change: "fitted" },
    ]);
    expect(diffDescriptions(before, before)).toEqual([]);
  });
});
