import { Temporal } from "../../base/time.ts";
import type { Allocation, AllocationInput, CheckPlan, Period, PlanFault, Seat } from "./allocation-types.ts";

type Hire = AllocationInput["hires"][number];

/**
 * Goes through a plan against its input and names everything that does not hold: who is seated twice or not at all,
 * on what may not serve it, at the same time as another, and every sum. It shares only types with the planner.
 */
export const checkPlan: CheckPlan = (input, plan) => {
  const hires = new Map(input.hires.map((hire) => [hire.id, hire]));
  return [
    ...checkPresence(input, plan, hires),
    ...plan.seated.flatMap((each) => checkSeat(each, hires.get(each.hire), input)),
    ...checkMeetings(input, plan, hires),
    ...checkSums(input, plan, hires),
  ];
};

const at = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;

function checkPresence(
  input: AllocationInput,
  plan: Allocation,
  hires: ReadonlyMap<string, Hire>,
): PlanFault[] {
  const times = new Map<string, number>();
  for (const { hire } of [...plan.seated, ...plan.refused]) times.set(hire, (times.get(hire) ?? 0) + 1);
  return [
    ...[...times.keys()].filter((id) => !hires.has(id)).map((hire) => ({ code: "unknownHire", hire })),
    ...input.hires
      .filter(({ id }) => times.get(id) !== 1)
      .map(({ id }) => ({ code: times.has(id) ? "hireTwice" : "hireMissing", hire: id })),
  ];
}

function checkSeat({ hire: id, vehicle }: Seat, hire: Hire | undefined, input: AllocationInput): PlanFault[] {
  const known = input.vehicles.find((each) => each.id === vehicle);
  if (known === undefined) return [{ code: "unknownVehicle", hire: id, vehicle }];
  if (hire === undefined) return [];
  const faults: PlanFault[] = [];
  if (!hire.vehicles.includes(vehicle)) faults.push({ code: "mayNotServe", hire: id, vehicle });
  if (hire.fixed !== undefined && hire.fixed !== vehicle)
    faults.push({ code: "notAsFixed", hire: id, vehicle });
  if (known.unavailable.some((off) => at(off.from) < at(hire.to) && at(hire.from) < at(off.to)))
    faults.push({ code: "offTheRoad", hire: id, vehicle });
  return faults;
}

/** The seats of each vehicle, by start. */
function bySeat(plan: Allocation, hires: ReadonlyMap<string, Hire>): Map<string, Hire[]> {
  const seats = new Map<string, Hire[]>();
  for (const { hire, vehicle } of plan.seated) {
    const found = hires.get(hire);
    if (found !== undefined) seats.set(vehicle, [...(seats.get(vehicle) ?? []), found]);
  }
  for (const list of seats.values()) list.sort((a, b) => at(a.from) - at(b.from) || at(a.to) - at(b.to));
  return seats;
}

function checkMeetings(
  input: AllocationInput,
  plan: Allocation,
  hires: ReadonlyMap<string, Hire>,
): PlanFault[] {
  const wait = input.turnaroundMinutes * 60_000;
  return [...bySeat(plan, hires)].flatMap(([vehicle, list]) =>
    list
      .slice(1)
      .filter((hire, k) => at(hire.from) < at(list[k]!.to) + wait)
      .map(({ id }) => ({ code: "meets", hire: id, vehicle })),
  );
}

function checkSums(input: AllocationInput, plan: Allocation, hires: ReadonlyMap<string, Hire>): PlanFault[] {
  const value = plan.seated.reduce((sum, { hire }) => sum + (hires.get(hire)?.value ?? 0), 0);
  const moved = plan.seated
    .filter(({ hire, vehicle }) => (hires.get(hire)?.now ?? vehicle) !== vehicle)
    .map(({ hire, vehicle }) => `${hire} ${hires.get(hire)?.now} ${vehicle}`);
  const told = plan.moves.map(({ hire, from, to }) => `${hire} ${from} ${to}`);
  const slack = 1e-6 * Math.max(1, value);
  const wrong: readonly (readonly [string, boolean])[] = [
    ["value", Math.abs(value - plan.value) > slack],
    ["moves", [...moved].sort().join() !== [...told].sort().join()],
    ["vehiclesUsed", new Set(plan.seated.map(({ vehicle }) => vehicle)).size !== plan.vehiclesUsed],
    ["lowerBound", plan.lowerBound > plan.vehiclesUsed],
    ["upperBound", plan.upperBound < value - slack],
    ["sellableGaps", recountGaps(input, plan, hires) !== plan.sellableGaps],
  ];
  return wrong.filter(([, isWrong]) => isWrong).map(([code]) => ({ code }));
}

/** Walks each vehicle's time from the first start to the last end, selling hires one after another. */
function recountGaps(input: AllocationInput, plan: Allocation, hires: ReadonlyMap<string, Hire>): number {
  const first = Math.min(...input.hires.map(({ from }) => at(from)));
  const last = Math.max(...input.hires.map(({ to }) => at(to)));
  const seats = bySeat(plan, hires);
  return input.vehicles.reduce(
    (sum, { id, unavailable }) =>
      sum + (input.hires.length === 0 ? 0 : sellFrom(input, first, last, seats.get(id) ?? [], unavailable)),
    0,
  );
}

function sellFrom(
  { sellableMinutes, turnaroundMinutes }: AllocationInput,
  first: number,
  last: number,
  seats: readonly Hire[],
  off: readonly Period[],
): number {
  const [length, wait] = [sellableMinutes * 60_000, turnaroundMinutes * 60_000];
  const taken = [
    ...seats.map(({ from, to }) => ({ from: at(from) - wait, to: at(to) + wait })),
    ...off.map(({ from, to }) => ({ from: at(from), to: at(to) })),
  ];
  let sold = 0;
  for (let start = first; start + length <= last; ) {
    const hit = taken.find(({ from, to }) => from < start + length && start < to);
    if (hit === undefined) sold++;
    start = hit === undefined ? start + length + wait : hit.to;
  }
  return sold;
}
