import { withRules } from "@setfair/engine";
import { abroadOf, countriesAnswer, crossingAnswer } from "../../desk/abroad.ts";
import { plainFinding } from "../../desk/glass.ts";
import { readHireData } from "../../desk/hire-data.ts";
import { instantOf } from "../../desk/local-time.ts";
import type { Handlers } from "../call.ts";
import { badField } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

export const abroadHandlers = {
  async readAbroad({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const [countries, crossing] = [countriesAnswer(data), crossingAnswer(data)];
    const findings = [...(countries?.findings ?? []), ...(crossing?.findings ?? [])];
    const { through, crossings, kitAboard, got, avoided = [], ...rest } = abroadOf(data);
    return {
      abroad: {
        ...rest,
        through: [...through],
        crossings: [...crossings],
        kitAboard: [...kitAboard],
        got: [...got],
        avoided: [...avoided],
      },
      version: data.parts.abroad?.version ?? 0,
      home: data.depotDocument.country,
      countries: countries?.result ?? null,
      crossing: crossing?.result ?? null,
      findings: withRules(data.ruleBook, () => findings.map(plainFinding)),
    };
  },

  setAbroad: (call) =>
    changeHire(call, OPEN_STAGES, async (hire) => {
      await hire.refuseOtherBase("abroad", call.query.basedOn, call.body);
      const { certificate } = call.body.papers;
      if (certificate !== undefined && certificate.validTo < certificate.validFrom)
        throw badField("papers.certificate.validTo", "expected a day not before validFrom");
      for (const [k, { on, at, zone }] of call.body.crossings.entries())
        if (at !== undefined) instantOf(`${on}T${at}`, zone ?? hire.data.depot.timeZone, `crossings.${k}.at`);
      await hire.putPart("abroad", call.body);
      await hire.audit("hire.abroadSet", {
        kit: call.body.kitAboard.length,
        got: call.body.got.length,
        crossings: call.body.crossings.length,
      });
    }),
} satisfies Partial<Handlers>;
