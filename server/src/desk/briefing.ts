import {
  type BriefingInput,
  composeBriefing,
  type Party,
  type RoomAnswer,
  type Trip,
  type TripForecast,
} from "@setfair/engine";
import { timesOf } from "./depot-times.ts";
import { countriesOf } from "./gates.ts";
import { type HireData, partOf } from "./hire-data.ts";

/** What is told where no trip is known yet: every night without a post, and frost possible. */
const UNKNOWN_TRIP_COLDEST_C = 0;

/** Cards for this vehicle, trip and party, in order; null while no vehicle is chosen. */
export function briefingFor(
  data: HireData,
  forecast: RoomAnswer<TripForecast> | null,
): ReturnType<typeof composeBriefing> | null {
  const party = partOf(data, "party");
  if (data.vehicle === null || party === null) return null;
  return composeBriefing({
    vehicle: data.vehicle.document.description,
    situation: situationOf(data, party, forecast),
    slotMinutes: timesOf(data.depotDocument).demonstrationMinutes[party.experience],
  });
}

/** What the briefing is told of the hire in hand. */
export function situationOf(
  data: HireData,
  party: Party,
  forecast: RoomAnswer<TripForecast> | null,
): BriefingInput["situation"] {
  const trip = partOf(data, "trip");
  const nights =
    forecast?.result.stops.flatMap(({ coldestNightC }) =>
      coldestNightC === null ? [] : [coldestNightC.p10],
    ) ?? [];
  const coldest = nights.length === 0 ? UNKNOWN_TRIP_COLDEST_C : Math.min(...nights);
  return {
    country:
      countriesOf(data).find((country) => country !== data.depotDocument.country) ??
      data.depotDocument.country,
    nightsOffHookUp: Math.min(
      365,
      trip === null ? nightsBetween(data.from, data.to) : nightsWithoutPost(trip),
    ),
    coldestNightC: Math.max(-50, Math.min(40, coldest)),
    firstTime: party.experience === "first",
    people: party.travellers.length,
    children: Math.min(11, party.travellers.filter(({ kind }) => kind === "child").length),
    dogs: party.dogs,
  };
}

const nightsBetween = (from: string, to: string) =>
  Math.max(0, Math.round((Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / 86_400_000));

const nightsWithoutPost = (trip: Trip) =>
  trip.stops
    .filter(({ acts, pitch }) => pitch.postAmperes === 0 || !acts.includes("plugIn"))
    .reduce((nights, { arrive, leave }) => nights + nightsBetween(arrive, leave), 0);
