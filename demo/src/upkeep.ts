import { addMonths, type Duty, dutiesOf } from "@setfair/engine";
import { type Store, toJson } from "@setfair/server";
import { addDays } from "./dates.ts";
import type { DemoVehicle } from "./vehicles.ts";

interface Filling {
  readonly store: Store;
  readonly by: string;
  readonly today: string;
}
const WHO: Readonly<Record<string, string>> = {
  mot: "Nowhere Test Station (invented)",
  lpgCheck: "Registered LPG engineer (invented)",
  habitation: "Fellside Habitation Workshop (invented)",
  service: "Larch Row Garage (invented)",
};
const EVERY_MONTHS = 12;

/** When a duty was done last and the time before, and when it falls due. */
function datesOf(
  { kind, everyMonths = EVERY_MONTHS, everyDays }: Duty,
  vehicle: DemoVehicle,
  today: string,
  k: number,
) {
  const known = vehicle.document.dueDates.find((due) => due.kind === kind)?.dueOn;
  if (everyDays !== undefined) {
    const on = addDays(today, -((k * 5) % everyDays));
    return { on, dueOn: addDays(on, everyDays), before: addDays(on, -everyDays) };
  }
  // everything but the worked MOT is good well past the season that is booked
  const dueOn = known ?? addDays(today, Math.min(everyMonths * 30 - 20, 280 + ((k * 37) % 70)));
  const on = addDays(addMonths(dueOn, -everyMonths), 1);
  return { on, dueOn, before: addMonths(on, -everyMonths) };
}

/** The histories of due dates, damp, water and defects of the invented fleet. */
export async function putUpkeep(filling: Filling, vehicles: readonly DemoVehicle[]): Promise<void> {
  for (const [n, vehicle] of vehicles.entries()) {
    await putDuties(filling, vehicle, n);
    await putReadings(filling, vehicle, n);
  }
  await putDefects(filling);
}

async function putDuties({ store, by, today }: Filling, vehicle: DemoVehicle, n: number): Promise<void> {
  const { description } = vehicle.document;
  const duties = dutiesOf(description, today).filter(({ kind }) => kind !== "wheelTorque");
  for (const [k, duty] of duties.entries()) {
    const { on, dueOn, before } = datesOf(duty, vehicle, today, n + k);
    const done = (day: string, until: string) =>
      store.upkeep.add({
        vehicleId: vehicle.id,
        kind: "done",
        on: day,
        by,
        document: toJson({
          duty: duty.kind,
          who: WHO[duty.kind] ?? "Tom Braithe",
          reference: `${duty.kind.toUpperCase()}-${day.slice(2, 4)}${String(n + 1).padStart(2, "0")}`,
          km: null,
          dueOn: until,
          dueKm: null,
        }),
      });
    // a young vehicle's first MOT is still ahead
    if (on < description.firstRegistered || on > today) {
      if (duty.kind !== "mot") await done(description.firstRegistered, dueOn);
      continue;
    }
    if (before >= description.firstRegistered) await done(before, addDays(on, 5));
    await done(on, dueOn);
  }
}

const PLACES = [
  "Rear corner, nearside",
  "Under the front window",
  "Roof light, front",
  "Washroom floor",
] as const;

async function putReadings(
  { store, by, today }: Filling,
  { id: vehicleId }: DemoVehicle,
  n: number,
): Promise<void> {
  for (const [k, position] of PLACES.entries()) {
    const percent = n === 2 && k === 0 ? 22 : 9 + ((n * 3 + k * 2) % 7);
    const document = { who: "Tom Braithe", position, percent, meter: "pin meter", weather: "dry, 12 °C" };
    await store.upkeep.add({ vehicleId, kind: "damp", on: addDays(today, -40 + k), document, by });
  }
  for (const [k, act] of (["sanitised", "flushed"] as const).entries()) {
    const on = addDays(today, -20 + k * 12);
    await store.upkeep.add({ vehicleId, kind: "water", on, document: { who: "Tom Braithe", act }, by });
  }
  await store.upkeep.add({
    vehicleId,
    kind: "frost",
    on: addDays(today, -70),
    document: { who: "Tom Braithe", state: "inUse" },
    by,
  });
}

/** vehicle, class, what, where, how it was mended where it was */
const DEFECTS = [
  ["lp4", "comfort", "Blind of the rear window does not stay down", "Rear window", "New cord fitted"],
  ["oc6", "comfort", "Reading light over the overcab bed flickers", "Overcab bed", null],
  ["ze2", "comfort", "Scratch in the worktop", "Kitchen", null],
  [
    "wl4",
    "safety",
    "Gas-strut of the bed weak: bed can fall",
    "Rear bed",
    "Both struts replaced by the workshop",
  ],
  ["cv2", "comfort", "Side door needs a firm pull", "Side door", "Rail cleaned and greased"],
] as const;

async function putDefects({ store, by }: Filling): Promise<void> {
  for (const [vehicleId, kind, what, where, how] of DEFECTS) {
    const document = { what, where, notedBy: "Tom Braithe", photograph: null };
    const { id } = await store.defects.add({ vehicleId, hireId: null, class: kind, document, by });
    if (how !== null) await store.defects.close(id, { by, how });
  }
}
