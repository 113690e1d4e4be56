import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { diagnoseSymptom } from "../src/rooms/diagnosis/diagnose-symptom.ts";
import { symptomsOf } from "../src/rooms/diagnosis/symptoms-of.ts";
import { CHECK_ANSWERS, type DiagnosisKnown, type SymptomOnVehicle } from "../src/rooms/diagnosis/types.ts";
import { STORE_IDS } from "../src/stores/stores.ts";
import { anySystems } from "./arbitrary.ts";

/** Any symptom of any vehicle, answered at random, whatever its stores and the depot's history say. */
const anyCase: fc.Arbitrary<{ readonly on: SymptomOnVehicle; readonly known: DiagnosisKnown }> = anySystems
  .map((systems) => symptomsOf({ systems: [...systems] }))
  .filter((symptoms) => symptoms.length > 0)
  .chain((symptoms) => fc.constantFrom(...symptoms))
  .chain((on) => {
    const checks = on.symptom.checks.map(({ id }) => id);
    const causes = on.symptom.causes.map(({ id }) => id);
    return fc.record({
      on: fc.constant(on),
      known: fc.record({
        answers: fc.array(
          fc.record({
            check: fc.constantFrom(...checks, "nobody.knows"),
            answer: fc.constantFrom(...CHECK_ANSWERS),
          }),
          { maxLength: 6 },
        ),
        stores: fc.array(
          fc.record({
            store: fc.constantFrom(...STORE_IDS),
            troubleChance: fc.double({ min: 0, max: 1, noNaN: true }),
          }),
          { maxLength: 3 },
        ),
        history: fc.array(fc.record({ cause: fc.constantFrom(...causes), count: fc.nat(50) }), {
          maxLength: 3,
        }),
      }),
    });
  });

describe("whatever fails on whatever vehicle", () => {
  it("nothing that needs trained hands, or waits for it, is ever proposed to a hirer", () => {
    fc.assert(
      fc.property(anyCase, ({ on, known }) => {
        const { result } = diagnoseSymptom(on, known);
        const seenThrough = new Set(
          known.answers
            .filter(({ check }, at) => known.answers.findLastIndex((one) => one.check === check) === at)
            .filter(({ answer }) => answer !== "cannotTell")
            .map(({ check }) => check),
        );
        for (const { check, danger } of result.plan) {
          expect(danger).toBeLessThan(2);
          const { danger: told, after } = on.symptom.checks.find(({ id }) => id === check)!;
          expect(told).toBeLessThan(2);
          for (const first of after) expect(seenThrough.has(first), `${check} waits for ${first}`).toBe(true);
          seenThrough.add(check);
        }
        if (on.symptom.dangerous) {
          expect(result.outcome).toBe("stop");
          expect(result.next).toBeNull();
        }
      }),
      { numRuns: 1500 },
    );
  });

  it("the chances of the causes sum to one", () => {
    fc.assert(
      fc.property(anyCase, ({ on, known }) => {
        const { causes } = diagnoseSymptom(on, known).result;
        expect(causes.reduce((sum, { chance }) => sum + chance.value, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 400 },
    );
  });

  it("answering no ends, with a call, and asks no check twice", () => {
    fc.assert(
      fc.property(anyCase, ({ on }) => {
        const answers: { check: string; answer: "notIt" }[] = [];
        let { result } = diagnoseSymptom(on, { answers });
        while (result.next !== null) {
          expect(answers.map(({ check }) => check)).not.toContain(result.next.check);
          answers.push({ check: result.next.check, answer: "notIt" });
          ({ result } = diagnoseSymptom(on, { answers }));
        }
        expect(result.outcome).toBe(on.symptom.dangerous ? "stop" : "call");
      }),
      { numRuns: 300 },
    );
  });
});
