import { BadInput, type InputProblem, parseWith } from "../base/bad-input.ts";
import { parseSpec } from "../systems/registry.ts";
import { type FittedSystem, type VehicleDescription, vehicleDescriptionSchema } from "./description.ts";

/**
 * Checks a vehicle description whole: shape and ranges, unique ids, each fitted system against its kind
 * (defaults filled in), and the cross-checks between masses and dimensions. Lengths in m, masses in kg.
 * @throws BadInput that names every field at fault and what was expected there
 */
export function parseVehicle(json: unknown): VehicleDescription {
  const shaped = parseWith(vehicleDescriptionSchema, json);
  const problems: InputProblem[] = [...sameIds(shaped.systems), ...crossChecks(shaped)];
  const systems = shaped.systems.map((fitted, index): FittedSystem => {
    try {
      return { ...fitted, spec: { ...parseSpec(fitted.kind, fitted.spec, `systems.${index}`) } };
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      problems.push(...error.problems);
      return fitted;
    }
  });
  problems.push(...tyreIndices(systems));
  if (problems.length > 0) throw new BadInput(problems);
  return { ...shaped, systems };
}

/** The table of load indices holds whole numbers only. */
function tyreIndices(systems: readonly FittedSystem[]): InputProblem[] {
  return systems.flatMap(({ kind, spec }, index) =>
    (["loadIndexFront", "loadIndexRear"] as const)
      .filter(
        (name) =>
          kind === "tyres" &&
          typeof spec[name] === "number" &&
          !(Number.isInteger(spec[name]) && spec[name] <= 130),
      )
      .map((name) => ({
        path: `systems.${index}.spec.${name}`,
        expected: "expected a whole load index up to 130",
      })),
  );
}

function sameIds(systems: readonly FittedSystem[]): InputProblem[] {
  return systems.flatMap(({ id }, index) => {
    const first = systems.findIndex((each) => each.id === id);
    return first === index
      ? []
      : [
          {
            path: `systems.${index}.id`,
            expected: `expected an id of its own; systems.${first} is called "${id}" too`,
          },
        ];
  });
}

function crossChecks({ masses, dimensions, firstRegistered, validFrom }: VehicleDescription): InputProblem[] {
  const { lengthM, wheelbaseM, rearOverhangM } = dimensions;
  const least = (wheelbaseM + rearOverhangM).toFixed(2);
  return [
    ...massChecks(masses),
    ...unless(
      wheelbaseM + rearOverhangM < lengthM,
      "dimensions.lengthM",
      `expected more than wheelbase and rear overhang together (${least} m)`,
    ),
    ...unless(
      firstRegistered <= validFrom,
      "validFrom",
      `expected a day from the first registration (${firstRegistered}) on`,
    ),
  ];
}

const unless = (isRight: boolean, path: string, expected: string): InputProblem[] =>
  isRight ? [] : [{ path, expected }];

function massChecks({
  mamKg,
  technicalMaxKg,
  miroKg,
  miroFrontKg,
  unladenKg,
  axleMaxKg,
}: VehicleDescription["masses"]): InputProblem[] {
  const running = `the mass in running order of ${miroKg} kg`;
  return [
    ...unless(
      mamKg <= technicalMaxKg,
      "masses.mamKg",
      `expected at most the technical maximum mass of ${technicalMaxKg} kg`,
    ),
    ...unless(miroKg < mamKg, "masses.miroKg", `expected less than the plated maximum mass of ${mamKg} kg`),
    ...unless(miroFrontKg < miroKg, "masses.miroFrontKg", `expected less than ${running}`),
    ...unless(
      miroFrontKg <= axleMaxKg.front,
      "masses.miroFrontKg",
      `expected at most the front axle's ${axleMaxKg.front} kg`,
    ),
    ...unless(
      miroKg - miroFrontKg <= axleMaxKg.rear,
      "masses.miroFrontKg",
      `expected to leave at most the rear axle's ${axleMaxKg.rear} kg`,
    ),
    ...unless(
      unladenKg === undefined || unladenKg <= miroKg,
      "masses.unladenKg",
      `expected at most ${running}`,
    ),
  ];
}
