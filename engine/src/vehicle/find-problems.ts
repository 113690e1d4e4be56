import { BadInput, type InputProblem, parseWith } from "../base/bad-input.ts";
import { parseSpec } from "../systems/registry.ts";
import { vehicleDescriptionSchema } from "./description.ts";
import { parseVehicle } from "./parse.ts";

function problemsOf(work: () => unknown): readonly InputProblem[] {
  try {
    work();
    return [];
  } catch (error) {
    if (error instanceof BadInput) return error.problems;
    throw error;
  }
}

const systemsOf = (json: unknown): readonly unknown[] => {
  const systems = typeof json === "object" && json !== null && "systems" in json ? json.systems : [];
  return Array.isArray(systems) ? systems : [];
};

/** Problems inside each fitted system, looked for even where the rest of the description is not whole yet. */
function specProblems(json: unknown): readonly InputProblem[] {
  return systemsOf(json).flatMap((system, index) => {
    if (typeof system !== "object" || system === null || !("kind" in system)) return [];
    const { kind } = system;
    if (typeof kind !== "string") return [];
    const spec = "spec" in system ? system.spec : {};
    return problemsOf(() => parseSpec(kind, spec, `systems.${index}`));
  });
}

/**
 * Everything that still keeps a half-written description from being one: each field by its path with what
 * was expected there, none twice. Empty where {@link parseVehicle} would take it.
 */
export function findVehicleProblems(json: unknown): readonly InputProblem[] {
  const shape = problemsOf(() => parseWith(vehicleDescriptionSchema, json));
  const found = shape.length > 0 ? [...shape, ...specProblems(json)] : problemsOf(() => parseVehicle(json));
  const key = ({ path, expected }: InputProblem) => `${path}\n${expected}`;
  return [...new Map(found.map((problem) => [key(problem), problem])).values()];
}
