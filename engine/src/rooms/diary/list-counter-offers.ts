import { type Figure, figure } from "../../base/figure.ts";
import type { IsoLocal } from "../../base/time.ts";
import type { Party } from "../situation.ts";
import { feasibleVehicles } from "./feasible-vehicles.ts";
import type { FeasibleInput, FleetVehicle, VehicleFeasibility } from "./types.ts";

/** A hire in the diary whose vehicle may be changed, since nobody was promised this one. */
export interface MovableHire {
  readonly hireId: string;
  readonly vehicleId: string;
  readonly party: Party;
  readonly from: IsoLocal;
  readonly to: IsoLocal;
}
export interface CounterOffersInput extends FeasibleInput {
  readonly movable: readonly MovableHire[];
  /** the latest start that still reaches what is booked on the way, such as a ferry */
  readonly latestFrom?: IsoLocal;
}
export type OfferStep =
  | { readonly kind: "shift"; readonly from: IsoLocal; readonly to: IsoLocal; readonly hours: number }
  /** what was booked on the way is missed: it has to be booked again */
  | { readonly kind: "otherCrossing" }
  | { readonly kind: "moveHire"; readonly hireId: string; readonly toVehicleId: string }
  /** a named person decides that dogs may travel in this vehicle, with a reason: never in silence */
  | { readonly kind: "decideOnDogs"; readonly dogs: number }
  | { readonly kind: "secondVehicle"; readonly vehicleId: string; readonly people: number };
export interface HireOffer {
  readonly vehicleId: string;
  readonly steps: readonly OfferStep[];
  /** what it costs those concerned, by one table of practice; least first */
  readonly trouble: Figure;
}

/** What a step costs those concerned: common practice without a source; an hour of shifting is 1. */
const COST = { otherCrossing: 10, moveHire: 8, decideOnDogs: 15, secondVehicle: 40 } as const;
const costOf = (step: OfferStep): number => (step.kind === "shift" ? Math.abs(step.hours) : COST[step.kind]);

/**
 * Where no vehicle can take a hire as asked: the nearest changes that would do, the least trouble first. Each is
 * asked of {@link feasibleVehicles} again, as it would then stand, before it is offered. Nothing that law wants is
 * ever among the changes.
 */
export function listCounterOffers(input: CounterOffersInput, most = 3): readonly HireOffer[] {
  const { result } = feasibleVehicles(plain(input));
  if (result.vehicles.some(({ possible }) => possible)) return [];
  const single = result.vehicles.flatMap((judged, k) => offersOf(judged, input.vehicles[k]!, input));
  const priced = [...single, ...pairs(input)]
    .map(({ vehicleId, steps }) => {
      const total = steps.reduce((sum, step) => sum + costOf(step), 0);
      return {
        vehicleId,
        steps,
        trouble: figure(total, "-", "-", { steps: steps.length }, "default", "practice"),
      };
    })
    .sort((a, b) => a.trouble.value - b.trouble.value || (a.vehicleId < b.vehicleId ? -1 : 1));
  // three ways of doing the same are one offer: the one that costs least
  const kinds = priced.map(({ vehicleId, steps }) => [vehicleId, ...steps.map(({ kind }) => kind)].join(" "));
  return priced.filter((_, k) => kinds.indexOf(kinds[k]!) === k).slice(0, most);
}

type Proposed = Omit<HireOffer, "trouble">;

const plain = ({ movable: _, latestFrom: __, ...rest }: CounterOffersInput): FeasibleInput => rest;
const fits = (input: FeasibleInput): boolean =>
  feasibleVehicles(input).result.vehicles.every(({ possible }) => possible);

/** What one vehicle would need: another time or another place for the hire that holds it, and a word about dogs. */
function offersOf(judged: VehicleFeasibility, fleet: FleetVehicle, input: CounterOffersInput): Proposed[] {
  const refused = judged.findings.filter(({ severity }) => severity === "refuse");
  const codes = new Set(refused.map(({ code }) => code));
  const dogs: OfferStep[] =
    codes.has("seats.noPets") || codes.has("seats.tooManyDogs")
      ? [{ kind: "decideOnDogs", dogs: input.party.dogs }]
      : [];
  const party = dogs.length > 0 ? { ...input.party, dogs: 0 } : input.party;
  const asked = { ...plain(input), vehicles: [fleet], party };
  const clashes = refused.filter(({ code }) => code === "diary.taken").map(({ about }) => about);
  const shifts = judged.nearestChanges.flatMap(({ kind, from, to, shiftHours }): readonly OfferStep[][] => {
    if (kind !== "shift" || from === undefined || to === undefined || shiftHours === undefined) return [];
    if (!fits({ ...asked, from, to })) return [];
    // later than it may be, or on an earlier day altogether
    const isMissed = input.latestFrom !== undefined && (from > input.latestFrom || shiftHours < -24);
    const shift: OfferStep = { kind: "shift", from, to, hours: shiftHours };
    return [isMissed ? [shift, { kind: "otherCrossing" }] : [shift]];
  });
  const moves = clashes.length === 1 ? movesOf(clashes[0] ?? "", fleet, asked, input) : [];
  const ways: OfferStep[][] = clashes.length === 0 && fits(asked) ? [[]] : [...shifts, ...moves];
  return ways.map((steps) => ({ vehicleId: fleet.vehicle.id, steps: [...steps, ...dogs] }));
}

/** The hire that holds the vehicle goes to another one that can take it, if it may be moved. */
function movesOf(hireId: string, fleet: FleetVehicle, asked: FeasibleInput, input: CounterOffersInput) {
  const hire = input.movable.find((each) => each.hireId === hireId);
  if (hire === undefined) return [];
  const freed = { ...fleet, bookings: fleet.bookings.filter((each) => each.hireId !== hireId) };
  if (!fits({ ...asked, vehicles: [freed] })) return [];
  return input.vehicles
    .filter((other) => other.vehicle.id !== fleet.vehicle.id)
    .filter((other) =>
      fits({ ...plain(input), vehicles: [other], party: hire.party, from: hire.from, to: hire.to }),
    )
    .map((other): OfferStep[] => [{ kind: "moveHire", hireId, toVehicleId: other.vehicle.id }]);
}

/** Two vehicles at the time asked for, the larger part in the first; each needs a driver of age. */
function pairs(input: CounterOffersInput): Proposed[] {
  const { travellers } = input.party;
  const adults = travellers.filter(({ kind }) => kind === "adult");
  if (adults.length < 2) return [];
  const children = travellers.filter(({ kind }) => kind === "child");
  const found: Proposed[] = [];
  for (const first of input.vehicles) {
    for (const second of input.vehicles) {
      if (first === second) continue;
      const split = splitParty(input, first, [adults, children]);
      if (split === null || !split.every((party, k) => fits(forOne(input, [first, second][k]!, party))))
        continue;
      const people = split[1]!.travellers.length;
      found.push({
        vehicleId: first.vehicle.id,
        steps: [{ kind: "secondVehicle", vehicleId: second.vehicle.id, people }],
      });
    }
  }
  // one pair is enough of them: the one that leaves most together
  return found.sort((a, b) => second(a) - second(b)).slice(0, 1);
}

const second = ({ steps }: Proposed): number => {
  const [step] = steps;
  return step?.kind === "secondVehicle" ? step.people : 0;
};
const forOne = (input: CounterOffersInput, vehicle: FleetVehicle, party: Party): FeasibleInput => ({
  ...plain(input),
  vehicles: [vehicle],
  party,
});

/** As many as the first vehicle has belts for, with the dogs; one adult at least drives the second. */
function splitParty(
  input: CounterOffersInput,
  first: FleetVehicle,
  [adults, children]: readonly [Party["travellers"], Party["travellers"]],
): readonly [Party, Party] | null {
  const belts = first.vehicle.systems.reduce(
    (sum, { kind, spec }) =>
      kind === "seatsBelts" && "beltedSeats" in spec ? sum + Number(spec.beltedSeats) : sum,
    0,
  );
  const order = [...adults.slice(0, 1), ...children, ...adults.slice(2), ...adults.slice(1, 2)];
  const inFirst = order.slice(0, Math.min(belts, order.length - 1));
  const inSecond = order.slice(inFirst.length);
  if (inSecond.length === 0 || !inSecond.some(({ kind }) => kind === "adult")) return null;
  const part = (travellers: Party["travellers"], dogs: number): Party => ({
    travellers,
    dogs,
    experience: input.party.experience,
  });
  return [part(inFirst, input.party.dogs), part(inSecond, 0)];
}
