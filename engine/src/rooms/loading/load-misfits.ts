import type { InputProblem } from "../../base/bad-input.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { LoadInput } from "./types.ts";

type Add = (isWrong: boolean, path: string, expected: string) => void;

/** Where a load does not fit the vehicle or the party: each field at fault, and what was expected. */
export function loadMisfits(input: LoadInput): readonly InputProblem[] {
  const found: InputProblem[] = [];
  const add: Add = (isWrong, path, expected) => {
    if (isWrong) found.push({ path, expected });
  };
  storesFit(input, add);
  idsFit(input, add);
  const { ticket, vehicle } = input;
  add(
    ticket !== undefined && ticket.frontKg + ticket.rearKg < vehicle.masses.miroKg / 2,
    "ticket",
    "expected the axles of the loaded vehicle, kg; less than half the mass in running order cannot be it",
  );
  return found;
}

function storesFit({ vehicle, load }: LoadInput, add: Add): void {
  const litres = specsOf(vehicle, "freshWater").reduce((sum, tank) => sum + tank.litres, 0);
  const cylinders = specsOf(vehicle, "lpg")[0]?.cylinders ?? 0;
  add(
    load.waterLitres > litres,
    "load.waterLitres",
    `expected at most the ${litres} L of the fresh-water tank`,
  );
  add(
    load.lpgCylinders > cylinders,
    "load.lpgCylinders",
    `expected at most the ${cylinders} cylinders fitted`,
  );
}

function idsFit({ party, load, driverId }: LoadInput, add: Add): void {
  const ids = party.travellers.map(({ id }) => id);
  add(driverId !== undefined && !ids.includes(driverId), "driverId", "expected the id of a traveller");
  load.seats.forEach(({ travellerId }, k) => {
    add(!ids.includes(travellerId), `load.seats.${k}.travellerId`, "expected the id of a traveller");
  });
  const items = load.items.map(({ id }) => id);
  items.forEach((id, k) => {
    add(items.indexOf(id) !== k, `load.items.${k}.id`, "expected an id of its own");
  });
  add(
    ids.some((id, k) => ids.indexOf(id) !== k),
    "party.travellers",
    "expected an id of its own for each traveller",
  );
}
