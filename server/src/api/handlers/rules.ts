import {
  citeSource,
  findCorrectionProblems,
  listMissingRules,
  RULES,
  type Rule,
  withRules,
} from "@setfair/engine";
import { toJson } from "../../desk/documents.ts";
import { forecastOf } from "../../desk/forecast.ts";
import { countriesOf, readGates } from "../../desk/gates.ts";
import { plainFinding } from "../../desk/glass.ts";
import { readHireData } from "../../desk/hire-data.ts";
import { previewInsurance } from "../../desk/insurance-preview.ts";
import { type RuleLine, readRulesData, ruleLine, rulesAnswer } from "../../desk/rules-page.ts";
import type { Handlers, Signed } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

const MONTHS = 12;

/** The shipped version that a day falls on, or the first one of that rule. */
function shippedOn(ruleId: string, day: string): Rule {
  const all = RULES.filter(({ id }) => id === ruleId);
  const found =
    all.find(({ validFrom, validTo }) => validFrom <= day && (validTo ?? "9999") >= day) ?? all[0];
  if (found === undefined) throw new Refusal("notFound");
  return found;
}

async function lineOf({ store }: Signed, ruleId: string, now: Date): Promise<RuleLine> {
  const line = ruleLine(ruleId, await readRulesData(store, now, MONTHS));
  if (line === null) throw new Refusal("notFound");
  return line;
}

type Kind = "correct" | "confirm" | "withdraw";
const ACTS = { correct: "rule.corrected", confirm: "rule.readAgain", withdraw: "rule.withdrawn" } as const;

function keep({ store, account }: Signed, ruleId: string, kind: Kind, document: object): Promise<void> {
  return store.within(async (inner) => {
    await inner.rules.add({ ruleId, kind, document: toJson(document), by: account.id });
    await inner.audit.add({ by: account.id, act: ACTS[kind], about: ruleId, document: toJson(document) });
  });
}

export const ruleHandlers = {
  async listRules({ context, signed, query }) {
    return rulesAnswer(await readRulesData(signed.store, context.now(), query.months), query);
  },

  async correctRule({ context, signed, params, body }) {
    const shipped = shippedOn(params.ruleId, body.validFrom);
    const { today } = await readRulesData(signed.store, context.now(), MONTHS);
    if (body.readOn > today) throw badField("readOn", "expected a day not after today");
    const rule: Rule = {
      id: shipped.id,
      unit: shipped.unit,
      country: shipped.country,
      ...(shipped.when === undefined ? {} : { when: shipped.when }),
      ...(shipped.exempt === undefined ? {} : { exempt: shipped.exempt }),
      ...(shipped.binds === undefined ? {} : { binds: shipped.binds }),
      ...(shipped.notChecked === undefined ? {} : { notChecked: shipped.notChecked }),
      ...body,
    };
    const problems = findCorrectionProblems(shipped, rule);
    if (problems.length > 0) throw new Refusal("badInput", { problems });
    await keep(signed, shipped.id, "correct", { rule });
    return lineOf(signed, shipped.id, context.now());
  },

  async confirmRule({ context, signed, params, body }) {
    const line = await lineOf(signed, params.ruleId, context.now());
    const { today } = await readRulesData(signed.store, context.now(), MONTHS);
    if (body.readOn > today) throw badField("readOn", "expected a day not after today");
    if (line.now !== null && body.readOn < line.now.readOn)
      throw badField("readOn", `expected a day not before ${line.now.readOn}, when it was last read`);
    await keep(signed, params.ruleId, "confirm", body);
    return lineOf(signed, params.ruleId, context.now());
  },

  async withdrawRule({ context, signed, params, body }) {
    const line = await lineOf(signed, params.ruleId, context.now());
    if (!line.own.some(({ rule }) => rule.validFrom === body.validFrom))
      throw badField("validFrom", "expected the first day of a version of the depot's own");
    await keep(signed, params.ruleId, "withdraw", body);
    return lineOf(signed, params.ruleId, context.now());
  },

  async missingRules({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const forecast = await forecastOf(signed.store, data);
    const gates = readGates(data, forecast?.answer ?? null);
    return withRules(data.ruleBook, () => ({
      bookId: data.ruleBook.id,
      missing: listMissingRules({ countries: countriesOf(data), on: data.from.slice(0, 10), gates }).map(
        (each) => {
          const found = gates
            .filter(({ gate }) => gate === each.gate)
            .flatMap(({ findings }) => findings)
            .find(({ code, about }) => each.about === (about === undefined ? code : `${code} ${about}`));
          return {
            ...each,
            finding: each.kind === "findingNotChecked" && found !== undefined ? plainFinding(found) : null,
            source: each.kind.startsWith("rule") ? citeSource(each.about) : null,
          };
        },
      ),
    }));
  },

  async previewInsurance({ context, signed, body }) {
    const { policy } = body;
    if (policy.validTo < policy.validFrom)
      throw badField("policy.validTo", "expected a day not before validFrom");
    return previewInsurance(signed.store, context.now(), policy);
  },
} satisfies Partial<Handlers>;
