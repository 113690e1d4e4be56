import { briefingFor } from "../../desk/briefing.ts";
import { forecastOf, SEED } from "../../desk/forecast.ts";
import { plainFinding } from "../../desk/glass.ts";
import { readHireData } from "../../desk/hire-data.ts";
import { instantOf } from "../../desk/local-time.ts";
import { loadState } from "../../desk/page.ts";
import { wholeRecords } from "../../desk/record-facts.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

const LONGEST_TRIP_DAYS = 60;

export const tripHandlers = {
  setTrip: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      const { body } = call;
      await hire.refuseOtherBase("trip", call.query.basedOn, body);
      const zone = body.timeZone;
      try {
        new Intl.DateTimeFormat("en-GB", { timeZone: zone });
      } catch {
        throw badField("timeZone", "expected the name of a time zone, e.g. Europe/London");
      }
      const times = [
        ["depart", body.depart] as const,
        ...body.stops.flatMap((stop, k) => [
          [`stops.${k}.arrive`, stop.arrive] as const,
          [`stops.${k}.leave`, stop.leave] as const,
        ]),
        ["return", body.return] as const,
      ];
      times.reduce((before, [path, local]) => {
        const at = instantOf(local, zone, path);
        if (Date.parse(at) < before) throw badField(path, "expected a time not before the one ahead of it");
        return Date.parse(at);
      }, 0);
      if (Date.parse(`${body.return}Z`) - Date.parse(`${body.depart}Z`) > LONGEST_TRIP_DAYS * 86_400_000) {
        throw badField("return", `expected at most ${LONGEST_TRIP_DAYS} days after depart`);
      }
      await hire.putPart("trip", body);
      await hire.audit("hire.tripSet", { stops: body.stops.length });
    }),

  async readForecast({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const forecast = await forecastOf(signed.store, data);
    if (forecast === null)
      throw new Refusal("missing", {
        problems: [{ path: "trip", expected: "a vehicle and a trip on this hire" }],
      });
    const { inputHash, engineVersion, cached, answer } = forecast;
    return {
      inputHash,
      engineVersion,
      seed: SEED,
      runs: answer.result.runs,
      cached,
      result: answer.result,
      findings: answer.findings.map(plainFinding),
    };
  },

  async readLoad({ context, signed, params }) {
    return loadState(await readHireData(signed.store, params.id, context.now()));
  },

  setLoad: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      await hire.refuseOtherBase("load", call.query.basedOn, call.body);
      await hire.putPart("load", call.body);
      await hire.audit("hire.loadSet", { items: call.body.items.length });
    }),

  async readBriefing({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const answer = briefingFor(data, (await forecastOf(signed.store, data))?.answer ?? null);
    if (answer === null)
      throw new Refusal("missing", { problems: [{ path: "vehicle", expected: "a vehicle on this hire" }] });
    const signedFor = wholeRecords(data.records)
      .filter(({ kind }) => kind === "briefed")
      .map(({ content }) => String(content.about));
    return {
      result: answer.result,
      findings: answer.findings.map(plainFinding),
      signed: [...new Set(signedFor)],
    };
  },
} satisfies Partial<Handlers>;
