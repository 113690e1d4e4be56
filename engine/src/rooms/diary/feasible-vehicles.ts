import { BadInput } from "../../base/bad-input.ts";
import type { Finding } from "../../base/finding.ts";
import { type IsoLocal, Temporal } from "../../base/time.ts";
import { makeFinding } from "../make-finding.ts";
import { checkSeats } from "../rules/check-seats.ts";
import { checkDueDates } from "./check-due-dates.ts";
import { nearestShifts, overlaps, type Span } from "./nearest-shift.ts";
import { isOpenAt } from "./opening-hours.ts";
import type {
  FeasibleInput,
  FeasibleVehicles,
  FleetVehicle,
  NearestChange,
  VehicleFeasibility,
} from "./types.ts";

/** facts that a change can lift; anything else refuses the vehicle for good */
type Fits = readonly Finding[];

/**
 * Which vehicles can take a party on these dates, and for each that cannot: why not and the nearest changes
 * that would do. Periods are half open: one hire may start when another ends plus the turnaround.
 * @throws BadInput where the hire ends before it starts
 */
export const feasibleVehicles: FeasibleVehicles = (input) => {
  if (input.to <= input.from)
    throw new BadInput([{ path: "to", expected: `expected a time after ${input.from}` }]);
  const vehicles = input.vehicles.map((each) => judge(each, input));
  return {
    result: { vehicles },
    findings: vehicles.some(({ possible }) => possible) ? [] : [noneFits(vehicles.length)],
  };
};

const noneFits = (count: number) =>
  makeFinding("diary", "diary.noneFits", "refuse", "policy", {
    facts: { count },
    mends: ["diary.changeSomething"],
  });

function judge(fleet: FleetVehicle, input: FeasibleInput): VehicleFeasibility {
  const asked = spanOf(input.from, input.to, input.timeZone);
  const turnaroundMs = input.turnaroundMinutes * 60_000;
  const bookings = fleet.bookings.filter(({ hireId }) => hireId !== input.hireId);
  const taken = bookings.map((booking) => ({
    ...spanOf(booking.from, booking.to, input.timeZone),
    hireId: booking.hireId,
    from: booking.from,
    to: booking.to,
  }));
  const clashes = taken
    .filter((booking) => overlaps(asked, booking, turnaroundMs))
    .map(({ hireId, from, to }) =>
      makeFinding("diary", "diary.taken", "refuse", "policy", {
        about: hireId,
        facts: { from, to, turnaroundMinutes: input.turnaroundMinutes },
        mends: ["diary.shift"],
      }),
    );
  const offRoad = blockedSpans(fleet, input, turnaroundMs);
  const blocks = offRoad
    .filter((block) => overlaps(asked, block, turnaroundMs))
    .map(({ id, kind, from, to }) =>
      makeFinding("diary", "diary.offTheRoad", "refuse", "policy", {
        about: id,
        facts: { from, to, kind },
        mends: ["diary.shift"],
      }),
    );
  const seats = checkSeats({
    vehicle: fleet.vehicle,
    party: input.party,
    today: input.today,
    days: { first: input.from.slice(0, 10), last: input.to.slice(0, 10) },
    petPolicy: { maxDogs: fleet.maxDogs ?? 0 },
  }).findings;
  const due = checkDueDates({
    vehicle: fleet.vehicle,
    dueDates: fleet.dueDates,
    to: input.to,
    today: input.today,
  }).findings;
  const findings: Fits = [...seats, ...clashes, ...blocks, ...due];
  const possible = findings.every(({ severity }) => severity !== "refuse");
  return {
    vehicleId: fleet.vehicle.id,
    possible,
    findings,
    nearestChanges: possible
      ? []
      : changes(findings, asked, [...taken, ...offRoad], turnaroundMs, input, fleet),
  };
}

/** A period off the road needs no turnaround on either side; it is drawn in by as much as overlapping adds. */
function blockedSpans(fleet: FleetVehicle, input: FeasibleInput, turnaroundMs: number) {
  return (fleet.blocked ?? []).map((block) => {
    const { start, end } = spanOf(block.from, block.to, input.timeZone);
    return { ...block, start: start + turnaroundMs, end: end - turnaroundMs };
  });
}

function spanOf(from: IsoLocal, to: IsoLocal, timeZone: string): Span {
  const at = (local: IsoLocal) =>
    Temporal.PlainDateTime.from(local).toZonedDateTime(timeZone).epochMilliseconds;
  return { start: at(from), end: at(to) };
}

function shiftsFor(
  asked: Span,
  taken: readonly Span[],
  turnaroundMs: number,
  { timeZone, hours }: FeasibleInput,
): readonly NearestChange[] {
  const shifts = { asked, taken, turnaroundMs, timeZone };
  if (hours === undefined) return nearestShifts(shifts);
  return nearestShifts({
    ...shifts,
    isOpen: (local) => isOpenAt(hours, local),
  });
}

function changes(
  findings: Fits,
  asked: Span,
  taken: readonly Span[],
  turnaroundMs: number,
  input: FeasibleInput,
  fleet: FleetVehicle,
): NearestChange[] {
  const has = (code: string) => findings.some((each) => each.code === code && each.severity === "refuse");
  const found: NearestChange[] = [];
  if (has("diary.taken") || has("diary.offTheRoad"))
    found.push(...shiftsFor(asked, taken, turnaroundMs, input));
  if (has("seats.tooFewBelts") || has("seats.tooFewBerths")) {
    const { belts, berths } = checkSeats({
      vehicle: fleet.vehicle,
      party: input.party,
      today: input.today,
    }).result;
    found.push({
      kind: "smallerParty",
      people: Math.min(belts.value, has("seats.tooFewBerths") ? berths.value : belts.value),
    });
  }
  if (has("seats.noPets") || has("seats.tooManyDogs")) found.push({ kind: "waivePets" });
  if (has("due.lapses") || has("due.lapsed")) found.push({ kind: "renewDue" });
  return found;
}
