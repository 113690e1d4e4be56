import { forecastInput, hashOfForecast } from "../../desk/forecast.ts";
import { readHireData } from "../../desk/hire-data.ts";
import { gazetteer } from "../../places/load-gazetteer.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

const MOST = 8;

export const placeHandlers = {
  async findPlaces({ query }) {
    const places = (await gazetteer()).search(query.q, MOST, query.country);
    return { places: [...places] };
  },

  async readTripQuestion({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const input = forecastInput(data);
    if (input === null)
      throw new Refusal("missing", {
        problems: [{ path: "trip", expected: "a vehicle and a trip on this hire" }],
      });
    return { inputHash: hashOfForecast(input, []), input };
  },
} satisfies Partial<Handlers>;
