import { figure } from "../../base/figure.ts";
import type { MassLine } from "./load-lines.ts";
import type { LoadInput, LoadLine } from "./types.ts";

/** A line as it is shown: every number a figure. */
export function shownLine(line: MassLine, { vehicle }: LoadInput): LoadLine {
  const inputs = {
    massKg: line.massKg,
    behindFrontAxleM: line.atM,
    wheelbaseM: vehicle.dimensions.wheelbaseM,
  };
  const formula = line.kind === "runningOrder" ? "-" : "mass.axleLoads";
  return {
    id: line.id,
    kind: line.kind,
    name: line.name,
    mass: figure(line.massKg, "kg", "-", {}, line.basis),
    behindFrontAxleM: line.atM,
    front: figure(
      line.frontKg,
      "kg",
      formula,
      inputs,
      line.kind === "runningOrder" ? line.basis : "computed",
    ),
    rear: figure(line.rearKg, "kg", formula, inputs, line.kind === "runningOrder" ? line.basis : "computed"),
    sdKg: line.sdKg,
    removable: line.removable,
  };
}
