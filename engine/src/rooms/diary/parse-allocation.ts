import { BadInput, type InputProblem, parseWith } from "../../base/bad-input.ts";
import { repeatedIds } from "../../base/repeated-ids.ts";
import { Temporal } from "../../base/time.ts";
import { type AllocationInput, allocationInputSchema, type Period } from "./allocation-types.ts";

/** Checks what a schema cannot: ids, references, periods. @throws BadInput that names every field */
export function parseAllocation(value: unknown): AllocationInput {
  const input = parseWith(allocationInputSchema, value);
  const known = new Set(input.vehicles.map(({ id }) => id));
  const problems = [
    ...repeatedIds("vehicles", input.vehicles),
    ...repeatedIds("hires", input.hires),
    ...input.vehicles.flatMap(({ unavailable }, k) =>
      unavailable.flatMap((period, at) => reversed(`vehicles.${k}.unavailable.${at}`, period)),
    ),
    ...input.hires.flatMap((hire, k) => [
      ...reversed(`hires.${k}`, hire),
      ...references(`hires.${k}`, hire, known),
    ]),
  ];
  if (problems.length > 0) throw new BadInput(problems);
  return input;
}

function reversed(path: string, { from, to }: Period): InputProblem[] {
  const isForward = Temporal.Instant.compare(Temporal.Instant.from(from), Temporal.Instant.from(to)) < 0;
  return isForward ? [] : [{ path: `${path}.to`, expected: `expected an instant after ${from}` }];
}

function references(
  path: string,
  { vehicles, fixed, now }: AllocationInput["hires"][number],
  known: ReadonlySet<string>,
): InputProblem[] {
  const unknown = (id: string, at: string): InputProblem[] =>
    known.has(id) ? [] : [{ path: at, expected: `expected the id of a vehicle, "${id}" is none` }];
  return [
    ...vehicles.flatMap((id, k) => unknown(id, `${path}.vehicles.${k}`)),
    ...(now === undefined ? [] : unknown(now, `${path}.now`)),
    ...(fixed === undefined || vehicles.includes(fixed)
      ? []
      : [{ path: `${path}.fixed`, expected: `expected one of its vehicles, "${fixed}" is not among them` }]),
  ];
}
