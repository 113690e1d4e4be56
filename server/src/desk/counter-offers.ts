import { listCounterOffers, type MovableHire, type OfferStep, type Party } from "@setfair/engine";
import type { z } from "zod";
import type { availabilitySchema } from "../api/schemas/availability.ts";
import type { DepotRow, Store } from "../store/types.ts";
import type { Fleet } from "./can-take.ts";
import { pinnedOf } from "./diary-page.ts";
import { asDocument } from "./documents.ts";
import { localOf } from "./local-time.ts";

type Offer = NonNullable<z.input<typeof availabilitySchema>["offers"]>[number];

/** Every pair of vehicles is tried: a larger fleet would keep the caller waiting. */
const MOST_VEHICLES = 40;

/** Where no vehicle can take it as asked: the ways in which it could be taken all the same, the least trouble first. */
export async function counterOffers(
  store: Store,
  depot: DepotRow,
  now: Date,
  { documents, input }: Fleet,
): Promise<readonly Offer[]> {
  if (documents.size > MOST_VEHICLES) return [];
  const movable = await movableHires(store, depot, now, { documents, input });
  const nowLocal = localOf(now.toISOString(), depot.timeZone);
  const nameOf = (vehicleId: string) => documents.get(vehicleId)?.description.name ?? "";
  return listCounterOffers({ ...input, movable: movable.map(({ hire }) => hire) })
    .filter(({ steps }) => steps.every((step) => step.kind !== "shift" || step.from >= nowLocal))
    .map(({ vehicleId, steps, trouble }) => ({
      vehicleId,
      vehicleName: nameOf(vehicleId),
      steps: steps.map((step) => stepAnswer(step, nameOf, movable)),
      trouble: { ...trouble, inputs: { ...trouble.inputs } },
    }));
}

interface Movable {
  readonly hire: MovableHire;
  readonly reference: string;
  readonly customer: string;
}

/** Hires that are booked, still to come and not pinned: nobody was promised this very vehicle. */
async function movableHires(
  store: Store,
  { timeZone }: DepotRow,
  now: Date,
  { input }: Fleet,
): Promise<readonly Movable[]> {
  const around = input.vehicles.flatMap(({ vehicle, bookings }) =>
    bookings
      .filter(({ from, to }) => from < input.to && to > input.from)
      .map(({ hireId }) => ({ hireId, vehicleId: vehicle.id })),
  );
  const ids = [...new Set(around.map(({ hireId }) => hireId))];
  const [pinned, parts] = [await pinnedOf(store, ids), await store.hires.partsOf(ids, ["party"])];
  const movable: Movable[] = [];
  for (const { hireId, vehicleId } of around) {
    const row = await store.hires.get(hireId);
    const party = parts.get(hireId)?.party;
    if (row?.stage !== "booked" || row.from <= now.toISOString() || pinned.has(hireId) || party === undefined)
      continue;
    const [from, to] = [localOf(row.from, timeZone), localOf(row.to, timeZone)];
    movable.push({
      hire: { hireId, vehicleId, party: asDocument<Party>(party.document), from, to },
      reference: row.number,
      customer: row.customerName,
    });
  }
  return movable;
}

function stepAnswer(
  step: OfferStep,
  nameOf: (vehicleId: string) => string,
  movable: readonly Movable[],
): Offer["steps"][number] {
  switch (step.kind) {
    case "moveHire": {
      const { hireId, toVehicleId } = step;
      const found = movable.find(({ hire }) => hire.hireId === hireId);
      const { reference = "", customer = "" } = found ?? {};
      return { kind: "moveHire", hireId, reference, customer, vehicleName: nameOf(toVehicleId) };
    }
    case "secondVehicle":
      return { kind: step.kind, people: step.people, vehicleName: nameOf(step.vehicleId) };
    default:
      return { ...step };
  }
}
