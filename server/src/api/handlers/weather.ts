import { asDocument, type DepotDocument, toJson } from "../../desk/documents.ts";
import { partOf, readHireData } from "../../desk/hire-data.ts";
import { localOf } from "../../desk/local-time.ts";
import { requireStage } from "../../desk/require-stage.ts";
import type { Store } from "../../store/types.ts";
import { fetchForTrip } from "../../weather/fetch-for-trip.ts";
import { WeatherUnavailable } from "../../weather/weather-service.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

const missing = (path: string, expected: string) =>
  new Refusal("missing", { problems: [{ path, expected }] });

async function isOn(store: Store): Promise<boolean> {
  const { document } = await store.depot.get();
  return asDocument<DepotDocument>(document).fetchesWeather === true;
}

export const weatherHandlers = {
  readWeatherService: async ({ context, signed }) => ({
    credit: context.weather?.credit ?? null,
    isOn: await isOn(signed.store),
  }),

  async putWeatherService({ context, signed, body }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const { id, name, version, document } = await inner.depot.get();
      const changed = toJson({ ...asDocument<DepotDocument>(document), fetchesWeather: body.isOn });
      const answer = await inner.depot.update({ name, document: changed }, version);
      if (!answer.ok) throw new Refusal("stale");
      await inner.audit.add({
        by: account.id,
        act: "depot.weatherService",
        about: id,
        document: { isOn: body.isOn },
      });
    });
    return { credit: context.weather?.credit ?? null, isOn: body.isOn };
  },

  async fetchWeather(call) {
    const { context, signed, params } = call;
    const { weather } = context;
    if (weather === undefined || weather === null || !(await isOn(signed.store)))
      throw missing("weatherService", "expected a weather service, switched on for this depot");
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...OPEN_STAGES);
    const trip = partOf(data, "trip");
    if (trip === null) throw missing("trip", "expected a trip on this hire");
    const issued = localOf(context.now().toISOString(), trip.timeZone);
    const given = await fetchForTrip(weather, trip, issued).catch((error: unknown) => {
      if (!(error instanceof WeatherUnavailable)) throw error;
      throw new Refusal("outsideFailed", {
        problems: [{ path: "weatherService", expected: `expected a forecast, got: ${error.failure}` }],
      });
    });
    if (given === null)
      throw missing("trip.depart", "expected a trip with a day that the forecast reaches, about nine days");
    return changeHire(call, OPEN_STAGES, async (hire) => {
      // asked for outside of the transaction: the trip may be another by now
      if (hire.data.parts.trip?.version !== data.parts.trip?.version) throw new Refusal("stale");
      await hire.putPart("trip", { ...trip, weather: given });
      await hire.audit("hire.weatherFetched", { days: given.days.length });
    });
  },
} satisfies Partial<Handlers>;
