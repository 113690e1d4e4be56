import { figure } from "../../base/figure.ts";
import type { Finding, Severity } from "../../base/finding.ts";
import { addDays, anniversary, fullYears } from "../../base/years.ts";
import { makeFinding } from "../make-finding.ts";
import type { Driver } from "../situation.ts";
import type { CheckInsurance, InsuranceInput } from "./types.ts";

/**
 * Each driver and the hire against the insurer's criteria, which are the depot's data: those of the policy in force
 * when it begins and of each renewal on the way, the stricter of both. Outside a limit the criteria say whether the
 * insurer is asked (refer) or it is refused. Cover that ends before the hire does is law.
 */
export const checkInsurance: CheckInsurance = (input) => {
  const byPolicy = [input.policy, ...(input.following ?? [])].map((policy) => ({ ...input, policy }));
  const drivers = input.drivers.map((driver) => {
    const findings = strictest(
      byPolicy.map((each) => [
        ...ageAndYears(driver, each),
        ...convictions(driver, each),
        ...history(driver, each),
      ]),
    );
    return { driverId: driver.id, outcome: outcomeOf(findings), findings };
  });
  const findings = [
    ...noDriver(input),
    ...notInForce(input),
    ...strictest(byPolicy.map(ofHire)),
    ...drivers.flatMap((driver) => driver.findings),
  ];
  return { result: { drivers, outcome: outcomeOf(findings) }, findings };
};

/** Of what the criteria of several policies say of one thing, what the strictest says, the earlier of two alike. */
function strictest(byPolicy: readonly (readonly Finding[])[]): readonly Finding[] {
  const thing = ({ code, about = "", facts }: Finding) => `${code} ${about} ${facts.endorsement ?? ""}`;
  const howStrict = (found: readonly Finding[], of: Finding): number => {
    const alike = found.filter((each) => thing(each) === thing(of));
    return alike.length === 0 ? 0 : alike.some(({ severity }) => severity === "refuse") ? 2 : 1;
  };
  return byPolicy.flatMap((found, k) =>
    found.filter((each) => {
      const all = byPolicy.map((other) => howStrict(other, each));
      return all.indexOf(Math.max(...all)) === k;
    }),
  );
}

function outcomeOf(findings: readonly Finding[]): "accept" | "refer" | "refuse" {
  if (findings.some(({ severity }) => severity === "refuse")) return "refuse";
  return findings.some(({ severity }) => severity === "refer") ? "refer" : "accept";
}

const limit = (value: number, unit: string, input: InsuranceInput) =>
  figure(value, unit, "-", { policy: input.policy.id }, "declared", input.policy.id);

function outside(
  code: string,
  severity: Severity,
  input: InsuranceInput,
  facts: Finding["facts"],
  about?: string,
): Finding {
  const mends = [
    severity === "refer"
      ? "insurance.askInsurer"
      : about === undefined
        ? "insurance.otherVehicle"
        : "licence.otherDriver",
  ];
  return makeFinding("insurance", `insurance.${code}`, severity, "cover", {
    facts,
    mends,
    sources: [input.policy.id],
    ...(about === undefined ? {} : { about }),
  });
}

const noDriver = ({ drivers }: InsuranceInput): Finding[] =>
  drivers.length > 0
    ? []
    : [
        makeFinding("insurance", "insurance.noDriver", "unchecked", "cover", {
          mends: ["licence.nameDriver"],
        }),
      ];

/** A day of the hire without cover, the renewals counted that follow without a gap. */
function notInForce({ policy, following = [], from, to }: InsuranceInput): Finding[] {
  const validTo = following.reduce(
    (until, next) => (next.validFrom <= addDays(until, 1) && next.validTo > until ? next.validTo : until),
    policy.validTo,
  );
  if (policy.validFrom <= from.slice(0, 10) && validTo >= to.slice(0, 10)) return [];
  return [
    makeFinding("insurance", "insurance.notInForce", "refuse", "law", {
      facts: { validFrom: policy.validFrom, validTo },
      sources: ["due.gb.insurance.required"],
      mends: ["insurance.renew"],
    }),
  ];
}

function ofHire(input: InsuranceInput): Finding[] {
  const { policy, vehicle, countries, nightsAbroad = 0 } = input;
  const found: Finding[] = [];
  if (vehicle.masses.mamKg > policy.maxMamKg) {
    const mam = figure(vehicle.masses.mamKg, "kg", "-", {}, "declared");
    found.push(outside("tooHeavy", "refuse", input, { mam, max: limit(policy.maxMamKg, "kg", input) }));
  }
  for (const country of countries.filter((each) => !policy.countries.includes(each)))
    found.push(outside("country", "refer", input, { country }, country));
  if (nightsAbroad > policy.maxNightsAbroad) {
    found.push(
      outside("nightsAbroad", "refer", input, { nights: nightsAbroad, max: policy.maxNightsAbroad }),
    );
  }
  return found;
}

function ageAndYears(driver: Driver, input: InsuranceInput): Finding[] {
  const { policy } = input;
  const [first, last] = [input.from.slice(0, 10), input.to.slice(0, 10)];
  const found: Finding[] = [];
  const facts = { driver: driver.name, min: policy.age.min, max: policy.age.max };
  if (fullYears(driver.born, first) < policy.age.min)
    found.push(outside("tooYoung", policy.age.outcome, input, facts, driver.id));
  if (last >= anniversary(driver.born, policy.age.max + 1))
    found.push(outside("tooOld", policy.age.outcome, input, facts, driver.id));
  const held = fullYears(driver.licence.firstCarEntitlement, first);
  if (held < policy.yearsHeld.min) {
    found.push(
      outside(
        "heldTooShort",
        policy.yearsHeld.outcome,
        input,
        { driver: driver.name, held: Math.max(0, held), min: policy.yearsHeld.min },
        driver.id,
      ),
    );
  }
  return found;
}

function convictions(driver: Driver, input: InsuranceInput): Finding[] {
  const { convictions: rule, codes } = input.policy;
  const within = (years: number) =>
    driver.licence.endorsements.filter(
      ({ offence }) => offence > addDays(anniversary(input.from.slice(0, 10), -years), -1),
    );
  const recent = within(rule.withinYears);
  const points = recent.reduce((sum, each) => sum + each.points, 0);
  const found: Finding[] = [];
  const say = (code: string, facts: Finding["facts"], outcome: Severity) =>
    found.push(outside(code, outcome, input, { driver: driver.name, ...facts }, driver.id));
  if (recent.length > rule.maxCount)
    say(
      "tooManyConvictions",
      { count: recent.length, max: rule.maxCount, years: rule.withinYears },
      rule.outcome,
    );
  if (points > rule.maxPointsTotal) say("tooManyPoints", { points, max: rule.maxPointsTotal }, rule.outcome);
  for (const each of recent.filter((one) => one.points > rule.maxPointsEach))
    say(
      "convictionTooGrave",
      { endorsement: each.code, points: each.points, max: rule.maxPointsEach },
      rule.outcome,
    );
  for (const { prefix, withinYears, outcome } of codes) {
    for (const each of within(withinYears).filter(({ code }) =>
      code.toUpperCase().startsWith(prefix.toUpperCase()),
    )) {
      say("endorsementCode", { endorsement: each.code, years: withinYears }, outcome);
    }
  }
  return found;
}

function history(driver: Driver, input: InsuranceInput): Finding[] {
  const { policy } = input;
  const found: Finding[] = [];
  if (driver.faultIncidents3y > policy.faultIncidents3y.max) {
    const facts = { driver: driver.name, count: driver.faultIncidents3y, max: policy.faultIncidents3y.max };
    found.push(outside("tooManyFaults", policy.faultIncidents3y.outcome, input, facts, driver.id));
  }
  if (driver.disqualified3y)
    found.push(outside("disqualified", policy.disqualified3y, input, { driver: driver.name }, driver.id));
  return found;
}
