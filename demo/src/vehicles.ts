import { parseVehicle, type VehicleDescription } from "@setfair/engine";
import type { VehicleDocument } from "@setfair/server";
import heron from "../../examples/pv2.json" with { type: "json" };
import { addDays, mayFriday, yearsBefore } from "./dates.ts";

export const HERON: VehicleDescription = parseVehicle(heron);

/** Another of the same kind, under its own name. */
function sister(id: string, name: string, registration: string, firstRegistered: string): VehicleDescription {
  return parseVehicle({ ...heron, id, name, registration, firstRegistered, validFrom: HERON.validFrom });
}

export interface DemoVehicle {
  readonly id: string;
  readonly validFrom: string;
  readonly document: VehicleDocument;
}

/** Good until well after the next May. */
const inDate = (today: string): VehicleDocument["dueDates"] =>
  (["tax", "insurance", "lpgCheck", "habitation", "extinguisher"] as const).map((kind, k) => ({
    kind,
    dueOn: addDays(mayFriday(today), 40 + 35 * k),
  }));

/** Three of one kind: Heron is free, Siskin is out in May, Teal's MOT falls due in the middle of those days. */
export function demoVehicles(today: string): readonly DemoVehicle[] {
  const motDue = addDays(mayFriday(today), 4);
  const rest = { maxDogs: 1, vehicleClass: "panelVan" };
  const described = (description: VehicleDescription, more: VehicleDocument["dueDates"]): DemoVehicle => ({
    id: description.id,
    validFrom: description.validFrom,
    document: { description, dueDates: [...inDate(today), ...more], ...rest },
  });
  return [
    described(HERON, []),
    described(sister("pv2-siskin", "Siskin", "SF26 SKN", HERON.firstRegistered), []),
    described(sister("pv2-teal", "Teal", "SF24 TEL", yearsBefore(motDue, 3)), [
      { kind: "mot", dueOn: motDue },
    ]),
  ];
}
