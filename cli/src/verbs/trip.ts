import {
  type ClimateNote,
  forecastTrip,
  type PostForecast,
  parseWith,
  type RangeForecast,
  type StoreForecast,
  shownChancePct,
  type TripForecast,
  tripInputSchema,
} from "@setfair/engine";
import { checkedVehicle, type Room, roomVerb } from "../room-verb.ts";
import { tripOutputSchema } from "../schemas/trip.ts";
import { writeTable } from "../table.ts";
import { type Call, wholeFlag } from "../verb.ts";
import { WORDS } from "../words.ts";

export const tripRoom: Room<TripForecast> = {
  input: tripInputSchema,
  output: tripOutputSchema,
  options: { runs: { type: "string" }, seed: { type: "string" }, audit: { type: "boolean" } },
  answer: (input, call) => {
    const given = parseWith(tripInputSchema, withFlags(input, call));
    const trip = { ...given, vehicle: checkedVehicle(given.vehicle) };
    call.io.err(`${WORDS.t("cli.working.trip", { runs: trip.runs })}\n`);
    return forecastTrip(trip);
  },
  table: tripTable,
};
export const tripVerb = roomVerb(tripRoom);

/** Flags go before what the file says. */
function withFlags(input: unknown, call: Call): unknown {
  if (typeof input !== "object" || input === null || Array.isArray(input)) return input;
  const [runs, seed] = [wholeFlag(call, "runs"), wholeFlag(call, "seed")];
  return {
    ...input,
    ...(runs === undefined ? {} : { runs }),
    ...(seed === undefined ? {} : { seed }),
    ...(call.flags.audit === true ? { audit: true } : {}),
  };
}

function tripTable(forecast: TripForecast): string {
  const weak = forecast.notes.filter((note) => note.weak).length;
  const posts = forecast.posts ?? [];
  return [
    WORDS.t("cli.trip.lasts", {
      pct: forecast.lastsShownPct,
      runs: forecast.runs,
      seed: String(forecast.seed),
    }),
    "",
    storesTable(forecast.stores),
    ...troubleTable(forecast.stores),
    "",
    stopsTable(forecast),
    ...(posts.length > 0 ? ["", postsTable(posts), "", WORDS.t("onPost.caution")] : []),
    "",
    ...(forecast.ranges ?? []).map(rangeLine),
    "",
    ...forecast.notes.map((note) => weatherLine(note, forecast)),
    ...(weak > 0 ? ["", WORDS.t("cli.trip.weak", { count: weak })] : []),
    ...(forecast.audit === undefined ? [] : ["", WORDS.t("cli.trip.audit"), auditTable(forecast.audit)]),
  ].join("\n");
}

const time = (iso: string | null) => (iso === null ? WORDS.t("cli.dash") : WORDS.dateText(iso, "dayTime"));
const outOf100 = (pct: number) => WORDS.t("cli.outOf100", { pct });
type Head =
  | "store"
  | "atDeparture"
  | "capacity"
  | "perDay"
  | "trouble"
  | "inTrouble"
  | "early"
  | "middle"
  | "late"
  | "stop"
  | "arrive"
  | "hookUp"
  | "coldest"
  | "reach"
  | "weakest"
  | "post"
  | "atVehicle"
  | "kept"
  | "kettle"
  | "in"
  | "out"
  | "change"
  | "residual";
const heads = (...names: readonly Head[]) => names.map((name) => WORDS.t(`cli.trip.${name}`));
/** letters of a name or a list in a table that is read at 80 columns */
const NAME_LETTERS = 22;
const LIST_LETTERS = 30;

function storesTable(stores: readonly StoreForecast[]): string {
  return writeTable(
    heads("store", "atDeparture", "capacity", "perDay", "trouble"),
    stores.map(({ store, atDeparture, capacity, usePerDay, trouble }) => [
      WORDS.say(`store.${store}`),
      WORDS.figureText(atDeparture),
      WORDS.figureText(capacity),
      WORDS.figureText(usePerDay),
      outOf100(shownChancePct(trouble.chance)),
    ]),
    { right: [1, 2, 3, 4] },
  );
}

/** When it comes to trouble: only stores that meet it in some trip. */
function troubleTable(stores: readonly StoreForecast[]): string[] {
  const met = stores.filter(({ trouble }) => trouble.chance > 0);
  if (met.length === 0) return [];
  const table = writeTable(
    heads("inTrouble", "early", "middle", "late"),
    met.map(({ store, trouble }) => [
      WORDS.say(`store.${store}`),
      time(trouble.p10At),
      time(trouble.p50At),
      time(trouble.p90At),
    ]),
  );
  return ["", table, WORDS.t("cli.trip.inTroubleWhat")];
}
function stopsTable({ stops }: TripForecast): string {
  return writeTable(
    heads("stop", "arrive", "hookUp", "coldest", "reach", "weakest"),
    stops.map((stop) => [
      stop.name,
      time(stop.arrive),
      WORDS.t(stop.onHookUp ? "cli.yes" : "cli.no"),
      stop.coldestNightC === null
        ? WORDS.t("cli.dash")
        : WORDS.figureText({ value: stop.coldestNightC.p50, unit: "°C" }),
      outOf100(stop.reachShownPct),
      stop.weakest === null ? WORDS.t("cli.dash") : WORDS.say(`store.${stop.weakest}`),
    ]),
    { right: [3, 4], most: { 0: NAME_LETTERS } },
  );
}

function postsTable(posts: readonly PostForecast[]): string {
  return writeTable(
    heads("stop", "post", "atVehicle", "kept", "kettle"),
    posts.map(({ name, limit, power, volts, kept, alone }) => [
      name,
      WORDS.figureText(limit),
      `${WORDS.figureText(power)}, ${WORDS.figureText(volts)}`,
      kept.map(keptText).join("; "),
      WORDS.t("onPost.verdict", { verdict: alone.find(({ kind }) => kind === "kettle")?.verdict ?? "fits" }),
    ]),
    { right: [1], most: { 0: NAME_LETTERS - 8, 2: 14, 3: LIST_LETTERS } },
  );
}

function keptText({ kind, stage, full, instead }: PostForecast["kept"][number]): string {
  const load = WORDS.t("onPost.load", { kind });
  const shown = WORDS.figureText(stage);
  if (stage.value === 0) return WORDS.t("onPost.keptOff", { load, instead });
  if (stage.value >= full.value) return WORDS.t("onPost.keptAll", { load, stage: shown });
  return WORDS.t("onPost.keptPart", { load, stage: shown, full: WORDS.figureText(full), instead });
}

function rangeLine({ store, atDeparture, whenFull, reserve, road }: RangeForecast): string {
  return WORDS.t("trip.range", {
    store: WORDS.say(`store.${store}`),
    km: WORDS.figureText(atDeparture),
    full: WORDS.figureText(whenFull),
    reserve: WORDS.figureText(reserve),
    road: WORDS.figureText(road),
  });
}

function weatherLine(note: ClimateNote, { stops, timeZone }: TripForecast): string {
  return WORDS.t("cli.trip.station", {
    place: note.stop === "home" ? WORDS.t("cli.trip.home") : stops[note.stop]!.name,
    days: note.forecastDays,
    station: note.nearestStation,
    distance: WORDS.figureText(note.distance),
    memory: note.nearestFromMemory ? "yes" : "no",
    elevation: WORDS.figureText(note.elevation),
    assumed: note.elevation.basis === "default" ? "yes" : "no",
    zone: timeZone,
  });
}

function auditTable(audit: NonNullable<TripForecast["audit"]>): string {
  return writeTable(
    heads("store", "in", "out", "change", "residual"),
    audit.map((line) => [
      WORDS.say(`store.${line.store}`),
      ...[line.in, line.out, line.change].map((value) => WORDS.figureText({ value, unit: line.unit })),
      line.residual.toExponential(1),
    ]),
    { right: [1, 2, 3, 4] },
  );
}
