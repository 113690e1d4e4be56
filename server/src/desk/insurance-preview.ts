import { checkInsurance, type InsurancePolicy, withRules } from "@setfair/engine";
import type { z } from "zod";
import type { insurancePreviewAnswerSchema } from "../api/schemas/rules.ts";
import type { Store } from "../store/types.ts";
import { countriesOf, nightsAbroad } from "./gates.ts";
import { plainFinding } from "./glass.ts";
import { driversOf, type HireData, readRows } from "./hire-data.ts";

type Preview = z.input<typeof insurancePreviewAnswerSchema>;

/** What these criteria would say of each driver of a booked hire that begins while they hold, beside what holds now. */
export async function previewInsurance(store: Store, now: Date, policy: InsurancePolicy): Promise<Preview> {
  const depot = await store.depot.get();
  const rows = await store.hires.all({ stages: ["booked"] });
  const hires = (await readRows(store, rows, depot, now)).filter(
    (data) => data.vehicle !== null && data.from.slice(0, 10) >= policy.validFrom,
  );
  const drivers = hires.flatMap((data) => judge(data, policy));
  return {
    drivers: drivers.filter(({ today, proposed }) => proposed !== "accept" || today !== proposed),
    asked: drivers.length,
  };
}

function judge(data: HireData, policy: InsurancePolicy): Preview["drivers"] {
  const after = answerOf(data, policy);
  const before = data.insurance === null ? null : answerOf(data, data.insurance.document);
  return driversOf(data).map((driver) => {
    const mine = (answer: ReturnType<typeof answerOf>) =>
      answer.findings.filter(
        ({ about }) => about === undefined || about === driver.id || !isDriver(data, about),
      );
    const outcome = (answer: ReturnType<typeof answerOf>) =>
      mine(answer).some(({ severity }) => severity === "refuse")
        ? ("refuse" as const)
        : mine(answer).some(({ severity }) => severity === "refer")
          ? ("refer" as const)
          : ("accept" as const);
    return {
      hireId: data.row.id,
      reference: data.row.number,
      customer: data.row.customerName,
      from: data.from,
      driver: driver.name,
      today: before === null ? null : outcome(before),
      proposed: outcome(after),
      findings: mine(after).map(plainFinding),
    };
  });
}

const isDriver = (data: HireData, about: string) => driversOf(data).some(({ id }) => id === about);

function answerOf(data: HireData, policy: InsurancePolicy) {
  const input = {
    drivers: [...driversOf(data)],
    policy,
    following: (data.insurance?.following ?? []).filter(({ validFrom }) => validFrom > policy.validTo),
    vehicle: data.vehicle!.document.description,
    from: data.from,
    to: data.to,
    countries: [...countriesOf(data)],
    nightsAbroad: nightsAbroad(data),
  };
  return withRules(data.ruleBook, () => checkInsurance(input));
}
