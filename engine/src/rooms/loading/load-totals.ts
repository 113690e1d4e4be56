import { type Figure, figure } from "../../base/figure.ts";
import { chanceOver } from "../../formulas/loading.ts";
import { LOAD_DEFAULTS as D } from "./defaults.ts";
import type { MassLine } from "./load-lines.ts";
import type { LoadAgainstLimit, LoadInput, WeighbridgeTicket } from "./types.ts";

/** The loads with what is not known of them, kg. */
export interface Totals {
  readonly total: Figure;
  readonly front: Figure;
  readonly rear: Figure;
  readonly totalSd: number;
  readonly frontSd: number;
  readonly rearSd: number;
}

/** Sums of the lines, or the ticket of the loaded vehicle in their place. */
export function loadTotals({ vehicle, ticket }: LoadInput, lines: readonly MassLine[]): Totals {
  if (ticket !== undefined) return weighed(ticket);
  const add = (of: (line: MassLine) => number) => lines.reduce((sum, line) => sum + of(line), 0);
  // what is not known of a mass lies on the axles as the mass does
  const share = (line: MassLine, onAxleKg: number) =>
    line.massKg === 0 ? 0 : (line.sdKg * onAxleKg) / line.massKg;
  const inputs = { lines: lines.length, wheelbaseM: vehicle.dimensions.wheelbaseM };
  return {
    total: figure(
      add(({ massKg }) => massKg),
      "kg",
      "mass.total",
      inputs,
      "computed",
    ),
    front: figure(
      add(({ frontKg }) => frontKg),
      "kg",
      "mass.axleLoads",
      inputs,
      "computed",
    ),
    rear: figure(
      add(({ rearKg }) => rearKg),
      "kg",
      "mass.axleLoads",
      inputs,
      "computed",
    ),
    totalSd: Math.sqrt(add(({ sdKg }) => sdKg ** 2)),
    frontSd: Math.sqrt(add((line) => share(line, line.frontKg) ** 2)),
    rearSd: Math.sqrt(add((line) => share(line, line.rearKg) ** 2)),
  };
}

function weighed(ticket: WeighbridgeTicket): Totals {
  const inputs = { ticket: ticket.reference, weighedAt: ticket.weighedAt };
  const read = (kg: number) => figure(kg, "kg", "-", inputs, "measured");
  const sd = D.weighedSdKg;
  return {
    total: read(ticket.frontKg + ticket.rearKg),
    front: read(ticket.frontKg),
    rear: read(ticket.rearKg),
    totalSd: sd * Math.SQRT2,
    frontSd: sd,
    rearSd: sd,
  };
}

/** A load against its limit, with the chance of being over it. */
export function against(load: Figure, sdKg: number, limit: Figure): LoadAgainstLimit {
  const inputs = { limitKg: limit.value, loadKg: load.value };
  return {
    load,
    limit,
    margin: figure(limit.value - load.value, "kg", "mass.margin", inputs, "computed"),
    sdKg,
    chanceOver: figure(
      chanceOver(load.value, sdKg, limit.value),
      "chance",
      "mass.chanceOver",
      { ...inputs, sdKg },
      "computed",
    ),
  };
}
