import {
  checkInsurance,
  checkLicence,
  checkLoad,
  checkOpening,
  checkSeason,
  checkSeats,
  type Finding,
  feasibleVehicles,
  type Gate,
  type GateReading,
  type RoomAnswer,
  type TripForecast,
  withRules,
} from "@setfair/engine";
import { abroadOf, countryFindings, crossingFindings, routeOf } from "./abroad.ts";
import { fleetVehicle } from "./fleet.ts";
import { driversOf, type HireData, partOf } from "./hire-data.ts";
import { moneyFindings, signatureFindings } from "./paper-gates.ts";
import { defectFindings, dueFindings } from "./upkeep.ts";

type Looked = readonly Finding[] | null;

/** Countries of the trip; while there is none the depot's own and those that were asked for. */
export function countriesOf(data: HireData): readonly string[] {
  const trip = partOf(data, "trip");
  const stops = trip?.stops.map(({ place }) => place.country) ?? partOf(data, "asked")?.countries ?? [];
  const all = [data.depotDocument.country, ...stops, ...abroadOf(data).through];
  return [...new Set(all)];
}

/** Nights with a stop outside the depot's country. */
export function nightsAbroad(data: HireData): number {
  const stops = partOf(data, "trip")?.stops ?? [];
  return stops
    .filter(({ place }) => place.country !== data.depotDocument.country)
    .reduce(
      (nights, stop) =>
        nights +
        Math.round((Date.parse(stop.leave.slice(0, 10)) - Date.parse(stop.arrive.slice(0, 10))) / 86_400_000),
      0,
    );
}

function seats(data: HireData): Looked {
  const party = partOf(data, "party");
  if (data.vehicle === null || party === null) return null;
  const { description, maxDogs } = data.vehicle.document;
  return checkSeats({
    vehicle: description,
    party,
    today: data.today,
    days: { first: data.from.slice(0, 10), last: data.to.slice(0, 10) },
    countries: [...countriesOf(data)],
    petPolicy: { maxDogs },
  }).findings;
}

function licence(data: HireData): Looked {
  const drivers = driversOf(data);
  if (data.vehicle === null || drivers.length === 0) return null;
  const vehicle = data.vehicle.document.description;
  const { from, to, today } = data;
  return checkLicence({ drivers: [...drivers], vehicle, from, to, today, countries: [...countriesOf(data)] })
    .findings;
}

function insurance(data: HireData): Looked {
  const drivers = driversOf(data);
  if (data.vehicle === null || data.insurance === null || drivers.length === 0) return null;
  return checkInsurance({
    drivers: [...drivers],
    policy: data.insurance.document,
    following: [...data.insurance.following],
    vehicle: data.vehicle.document.description,
    from: data.from,
    to: data.to,
    countries: [...countriesOf(data)],
    nightsAbroad: nightsAbroad(data),
  }).findings;
}

/** Masses and axles of the load plan; null while there is none. */
export function loadAnswer(data: HireData): ReturnType<typeof checkLoad> | null {
  const party = partOf(data, "party");
  const load = partOf(data, "load");
  if (data.vehicle === null || party === null || load === null) return null;
  const vehicle = data.vehicle.document.description;
  return withRules(data.ruleBook, () => checkLoad({ vehicle, party, load }));
}

function diary(data: HireData): Looked {
  const party = partOf(data, "party");
  if (data.vehicle === null || party === null) return null;
  const answer = feasibleVehicles({
    vehicles: [fleetVehicle(data.vehicle.document, data.bookings, data.depot.timeZone, data.blocks)],
    party,
    from: data.from,
    to: data.to,
    today: data.today,
    turnaroundMinutes: data.depotDocument.turnaroundMinutes,
    timeZone: data.depot.timeZone,
    hireId: data.row.id,
  });
  // the answer's own finding ("none of the vehicles can") would repeat at this gate what other gates refuse
  const found = answer.result.vehicles.flatMap(({ findings }) => findings);
  const opening = checkOpening({ hours: data.depotDocument.hours, from: data.from, to: data.to });
  return [...found.filter(({ gate }) => gate === "diary"), ...opening];
}

/** Season from the coldest night that the forecast has, with what the forecast itself says of it. */
function season(data: HireData, forecast: RoomAnswer<TripForecast> | null): Looked {
  if (data.vehicle === null || forecast === null) return null;
  const trip = partOf(data, "trip");
  const coldest = forecast.result.stops.flatMap(({ coldestNightC }) =>
    coldestNightC === null ? [] : [coldestNightC.p10],
  );
  const answer = checkSeason({
    vehicle: data.vehicle.document.description,
    from: data.from,
    to: data.to,
    countries: [...countriesOf(data)],
    stays: [...(routeOf(data) ?? [])],
    ...(trip === null ? {} : { trip }),
    snowChains: abroadOf(data).kitAboard.includes("snowChains"),
    ...(coldest.length === 0 ? {} : { coldestNightC: Math.max(-50, Math.min(40, ...coldest)) }),
  });
  return [...answer.findings, ...forecast.findings.filter(({ gate }) => gate === "season")];
}

/** What each room says now about this hire, gate by gate; a gate nobody could look at is left unchecked. */
export function readGates(data: HireData, forecast: RoomAnswer<TripForecast> | null): readonly GateReading[] {
  return withRules(data.ruleBook, () => readByRooms(data, forecast));
}

function readByRooms(data: HireData, forecast: RoomAnswer<TripForecast> | null): readonly GateReading[] {
  const looked: Record<Gate, Looked> = {
    seats: seats(data),
    licence: licence(data),
    insurance: insurance(data),
    masses: loadAnswer(data)?.findings ?? null,
    diary: diary(data),
    dueDates: dueFindings(data),
    defects: defectFindings(data),
    countries: countryFindings(data),
    crossing: crossingFindings(data),
    season: season(data, forecast),
    resources: forecast?.findings.filter(({ gate }) => gate === "resources") ?? null,
    money: moneyFindings(data),
    signatures: signatureFindings(data),
  };
  return (Object.keys(looked) as Gate[]).map((gate) => {
    const findings = looked[gate];
    return { gate, checkedAt: findings === null ? null : data.now, findings: findings ?? [] };
  });
}
