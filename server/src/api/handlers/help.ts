import { storesNow } from "@setfair/engine";
import { forecastOf } from "../../desk/forecast.ts";
import { faultsOf, helpEntries } from "../../desk/help.ts";
import { readHireData } from "../../desk/hire-data.ts";
import type { Handlers } from "../call.ts";

export const helpHandlers = {
  async readHelp({ context, signed, params }) {
    const { store } = signed;
    const data = await readHireData(store, params.id, context.now());
    const forecast = await forecastOf(store, data);
    return {
      faults: await faultsOf(store, data),
      stores: forecast === null ? [] : [...storesNow(forecast.answer.result, data.nowLocal)],
      entries: [...helpEntries(data.records)],
    };
  },
} satisfies Partial<Handlers>;
