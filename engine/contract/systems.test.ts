import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isSource } from "../src/sources/register.ts";
import { CHARGES } from "../src/systems/checking.ts";
import { applies, type FieldSpec, VIEWS } from "../src/systems/contract.ts";
import { COUNT } from "../src/systems/define-fields.ts";
import { parseSpec, SYSTEM_KINDS, type SystemKind, systemModule } from "../src/systems/registry.ts";
import { SAMPLE_SITUATIONS, sampleSpecs } from "./arbitrary.ts";

const FILES = ["spec", "physics", "briefing", "checks", "faults", "index"];
const PARTS = ["physics", "briefing", "checks", "faults"] as const;
const folderOf = (kind: string) => kind.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const charges = new Set<string>(CHARGES);
const repeated = (ids: readonly string[]) => ids.filter((id, index) => ids.indexOf(id) !== index);
const specFor = (kind: SystemKind) => sampleSpecs(kind, 1)[0]!;

describe.each(SYSTEM_KINDS)("%s", (kind) => {
  const module = systemModule(kind);
  const specs = sampleSpecs(kind, 80);
  const fields = Object.entries(module.spec.fields);

  it.each(FILES)("has its file %s", (file) => {
    expect(existsSync(new URL(`../src/systems/${folderOf(kind)}/${file}.ts`, import.meta.url))).toBe(true);
  });

  it.each(PARTS)("has a %s that applies, or says why not", (name) => {
    const part: object = module[name];
    if ("notApplicable" in part) expect(String(part.notApplicable).length).toBeGreaterThan(10);
  });

  it("has defaults inside their ranges and a source for every field", () => {
    for (const [name, field] of fields) {
      expect(isSource(field.source), `${name}: ${field.source}`).toBe(true);
      if (field.type === "number") {
        expect(field.min, name).toBeLessThan(field.max);
        if (field.default !== undefined) {
          expect(field.default, name).toBeGreaterThanOrEqual(field.min);
          expect(field.default, name).toBeLessThanOrEqual(field.max);
        }
      }
      if (field.type === "choice" && field.default !== undefined)
        expect(field.options).toContain(field.default);
    }
  });

  it("refuses an unknown key", () => {
    expect(() => parseSpec(kind, { ...specFor(kind), colour: "green" }, "systems.4")).toThrow("colour");
  });

  it.each(fields.flatMap(([name, field]) => wrongValues(field).map((value) => [name, value] as const)))(
    "refuses %s = %s and names the field",
    (name, value) => {
      expect(() => parseSpec(kind, { ...specFor(kind), [name]: value }, "systems.4")).toThrow(
        `systems.4.spec.${name}`,
      );
    },
  );

  it("has masses and parts that can be placed", () => {
    for (const spec of specs) {
      for (const mass of module.spec.masses(spec)) {
        expect(mass.massKg).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(mass.behindFrontAxleM)).toBe(true);
      }
      const parts = module.spec.parts(spec);
      expect(repeated(parts.map(({ part }) => part))).toEqual([]);
      for (const part of parts) {
        expect(part.part.startsWith(`${kind}.`)).toBe(true);
        expect(part.lengthM * part.heightM).toBeGreaterThan(0);
      }
    }
  });

  it("has cards that can be weighed and fitted to a slot", () => {
    const { briefing } = module;
    if (!applies(briefing)) return;
    for (const spec of specs.slice(0, 30)) {
      for (const situation of SAMPLE_SITUATIONS.slice(0, 12)) {
        const cards = briefing.cards(spec, situation);
        expect(repeated(cards.map(({ id }) => id))).toEqual([]);
        for (const card of cards) {
          expect(card.id.startsWith(`${kind}.`)).toBe(true);
          expect(card.chance).toBeGreaterThan(0);
          expect(card.chance).toBeLessThanOrEqual(1);
          expect(Number.isSafeInteger(card.costPence)).toBe(true);
          expect(Number.isInteger(card.minutes * 2) && card.minutes > 0).toBe(true);
          expect(card.mentions.every((mention) => mention !== kind && systemModule(mention))).toBeTruthy();
          for (const fact of Object.values(card.facts)) expect(fact).not.toBeNaN();
        }
      }
    }
  });

  it("has checks that point at drawn parts, known charges and sound scales", () => {
    const { checks } = module;
    if (!applies(checks)) return;
    for (const spec of specs) {
      const found = checks.checks(spec);
      const drawn = module.spec.parts(spec).map(({ part }) => part);
      expect(repeated(found.map(({ id }) => id))).toEqual([]);
      for (const check of found) {
        expect(check.id.startsWith(`${kind}.`)).toBe(true);
        expect(VIEWS).toContain(check.view);
        expect(check.when.length).toBeGreaterThan(0);
        if (check.part !== undefined) expect(drawn).toContain(check.part);
        if (check.charge !== undefined) expect(charges).toContain(check.charge);
        expect(check.kind === "reading").toBe(check.reading !== undefined);
        expect(check.kind === "count").toBe(check.expected !== undefined);
        if (check.reading) {
          expect(check.reading.max).toBeGreaterThan(check.reading.min);
          expect(isSource(check.reading.source)).toBe(true);
        }
      }
    }
  });

  it("has symptoms whose checks belong to their causes, in an order that can be kept", () => {
    const { faults } = module;
    if (!applies(faults)) return;
    for (const spec of specs) {
      const symptoms = faults.symptoms(spec);
      expect(repeated(symptoms.map(({ id }) => id))).toEqual([]);
      for (const { causes, checks, dangerous } of symptoms) {
        const causeIds = causes.map(({ id }) => id);
        expect(causes.length).toBeGreaterThan(0);
        expect(causes.every(({ weight }) => weight > 0)).toBe(true);
        expect(repeated(causeIds)).toEqual([]);
        expect(repeated(checks.map(({ id }) => id))).toEqual([]);
        // where it is dangerous the answer is to stop and call, not to look further
        if (dangerous) expect(checks).toEqual([]);
        const before: string[] = [];
        for (const check of checks) {
          expect(causeIds).toEqual(expect.arrayContaining([...check.causes]));
          expect(before).toEqual(expect.arrayContaining([...check.after]));
          expect(check.minutes).toBeGreaterThan(0);
          before.push(check.id);
        }
      }
    }
  });
});

it("no two systems share the id of a card, a check, a symptom or a part", () => {
  const prefixes = SYSTEM_KINDS.map((kind) => `${kind}.`);
  expect(new Set(prefixes).size).toBe(SYSTEM_KINDS.length);
});

function wrongValues(field: FieldSpec): readonly unknown[] {
  switch (field.type) {
    case "number": {
      const unit = field.unit === COUNT ? 1 : 0.001;
      return [
        Number.NaN,
        Number.POSITIVE_INFINITY,
        "7",
        field.min - unit,
        field.max + unit,
        ...(field.min >= 0 ? [-1] : []),
      ];
    }
    case "choice":
      return ["another", 1];
    case "flag":
      return ["yes", 1];
    case "date":
      return ["15/01/2026", "2026-02-30", 2026];
  }
}
