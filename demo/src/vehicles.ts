import { parseVehicle, type VehicleDescription } from "@setfair/engine";
import type { VehicleDocument } from "@setfair/server";
import heron from "../../examples/pv2.json" with { type: "json" };
import gannet from "../../examples/vehicles/ac4.json" with { type: "json" };
import wren from "../../examples/vehicles/cv2.json" with { type: "json" };
import curlew from "../../examples/vehicles/lp4.json" with { type: "json" };
import puffin from "../../examples/vehicles/oc6.json" with { type: "json" };
import ptarmigan from "../../examples/vehicles/wl4.json" with { type: "json" };
import avocet from "../../examples/vehicles/ze2.json" with { type: "json" };
import { addDays, mayFriday } from "./dates.ts";

export const HERON: VehicleDescription = parseVehicle(heron);

export interface DemoVehicle {
  readonly id: string;
  readonly validFrom: string;
  readonly document: VehicleDocument;
}

/** vehicle → class of the price list, dogs that the depot takes */
const FLEET = [
  [heron, "panelVan", 1],
  [wren, "campervan", 0],
  [curlew, "lowProfile", 1],
  [puffin, "overcab", 0],
  [gannet, "aClass", 1],
  [avocet, "campervan", 0],
  [ptarmigan, "lowProfile", 2],
] as const;

/** Good until well after the next May. */
function inDate(today: string, vehicle: VehicleDescription): VehicleDocument["dueDates"] {
  const hasGas = vehicle.systems.some(({ kind }) => kind === "lpg");
  return (["tax", "insurance", "lpgCheck", "habitation", "extinguisher"] as const)
    .map((kind, k) => ({ kind, dueOn: addDays(mayFriday(today), 40 + 35 * k) }))
    .filter(({ kind }) => hasGas || kind !== "lpgCheck");
}

/** The next MOT day: the third birthday, then every year; Gannet's lies in the middle of the May week. */
function motOf(today: string, { id, firstRegistered }: VehicleDescription): string {
  if (id === "ac4") return addDays(mayFriday(today), 4);
  const year = Math.max(Number(firstRegistered.slice(0, 4)) + 3, Number(today.slice(0, 4)));
  const day = `${year}${firstRegistered.slice(4)}`;
  return day > today ? day : `${year + 1}${firstRegistered.slice(4)}`;
}

/** Seven vehicles of seven kinds: Heron is free in the May week, Curlew is out, Gannet's MOT falls due on the way. */
export function demoVehicles(today: string): readonly DemoVehicle[] {
  return FLEET.map(([described, vehicleClass, maxDogs]) => {
    const description = parseVehicle(described);
    const mot = { kind: "mot", dueOn: motOf(today, description) } as const;
    return {
      id: description.id,
      validFrom: description.validFrom,
      document: { description, dueDates: [...inDate(today, description), mot], maxDogs, vehicleClass },
    };
  });
}
