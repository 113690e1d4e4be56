import { type Figure, figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays, anniversary, daysBetween, fullYears, monthsAfter } from "../../base/years.ts";
import { daysOfChange, ruleFigure } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import { makeFinding } from "../make-finding.ts";
import type { Driver } from "../situation.ts";
import { entitledMass, zeroEmissionAllowance } from "./entitled-mass.ts";
import type { CheckLicence, DriverEntitlement, LicenceInput } from "./types.ts";

interface Hire {
  readonly input: LicenceInput;
  readonly first: IsoDate;
  readonly last: IsoDate;
  readonly mam: Figure;
}

/**
 * Great Britain's licence rules by plated mass, for each driver to the last day of the hire. A licence nobody
 * has looked at is unchecked, never fine. Rules are dated data; the sources of each finding are rule ids.
 */
export const checkLicence: CheckLicence = (input) => {
  const hire: Hire = {
    input,
    first: input.from.slice(0, 10),
    last: input.to.slice(0, 10),
    mam: figure(input.vehicle.masses.mamKg, "kg", "-", { vehicle: input.vehicle.id }, "declared"),
  };
  const drivers = input.drivers.map((driver) => judgeDriver(driver, hire));
  const nobody =
    drivers.length === 0
      ? [makeFinding("licence", "licence.noDriver", "unchecked", "law", { mends: ["licence.nameDriver"] })]
      : [];
  return { result: { drivers }, findings: [...nobody, ...drivers.flatMap(({ findings }) => findings)] };
};

function judgeDriver(driver: Driver, hire: Hire): DriverEntitlement {
  const { upTo, why } = entitledMass(driver, hire.input.vehicle, hire.input.countries, hire.first, hire.last);
  const findings = [
    ...seen(driver, hire),
    ...otherwiseSeen(driver),
    ...visiting(driver, hire),
    ...oldEnough(driver, hire),
    ...bigEnough(driver, hire, upTo, why),
    ...photocard(driver, hire),
  ];
  const has = (severity: Finding["severity"]) => findings.some((each) => each.severity === severity);
  return {
    driverId: driver.id,
    mayDrive: has("refuse") ? "no" : has("unchecked") ? "unchecked" : "yes",
    upTo,
    findings,
  };
}

function seen(driver: Driver, { first, input }: Hire): Finding[] {
  const days = ruleFigure("licence.gb.checkCodeDays", first);
  const about = { about: driver.id, sources: [days.source!], mends: ["licence.askForCode"] };
  const { checkedOn } = driver.licence;
  if (checkedOn === undefined || checkedOn > input.today) {
    return [
      makeFinding("licence", "licence.unchecked", "unchecked", "law", {
        ...about,
        facts: { driver: driver.name },
      }),
    ];
  }
  if (daysBetween(checkedOn, first) <= days.value) return [];
  const facts = { driver: driver.name, checkedOn, days, from: addDays(first, -days.value) };
  return [makeFinding("licence", "licence.checkTooOld", "unchecked", "policy", { ...about, facts })];
}

/** Seen without the check code (the service was down, or the licence is not a Great Britain one): goes with a condition. */
function otherwiseSeen({ id, name, licence }: Driver): Finding[] {
  const { otherEvidence, checkedOn } = licence;
  if (otherEvidence === undefined || checkedOn === undefined) return [];
  const facts = { driver: name, seen: otherEvidence.seen, by: otherEvidence.by, checkedOn };
  const more = { about: id, facts, sources: ["practice"], mends: ["licence.askForCode"] };
  return [makeFinding("licence", "licence.otherEvidence", "condition", "policy", more)];
}

/** A visitor from outside the EEA drives on the licence from home for so many months, to the last day of the hire. */
function visiting({ id, name, licence }: Driver, { first, last }: Hire): Finding[] {
  if (licence.issuedBy !== "other") return [];
  const months = ruleFigure("licence.gb.visitor.months", first);
  const more = { about: id, sources: [months.source!], mends: ["licence.otherDriver"] };
  const { visitingSince } = licence;
  if (visitingSince === undefined) {
    const asked = { ...more, facts: { driver: name, months }, mends: ["licence.askSince"] };
    return [makeFinding("licence", "licence.visitorSinceUnknown", "unchecked", "law", asked)];
  }
  const until = addDays(monthsAfter(visitingSince, months.value), -1);
  if (last <= until) return [];
  const facts = { driver: name, months, until };
  return [makeFinding("licence", "licence.visitorTooLong", "refuse", "law", { ...more, facts })];
}

/** Old enough on the first day, and on each later one from which another age is asked. */
function oldEnough(driver: Driver, { first, last, mam, input }: Hire): Finding[] {
  const leastOn = (day: IsoDate) => {
    const carLimit = zeroEmissionAllowance(input.vehicle, day) ?? ruleFigure("licence.gb.b.maxMamKg", day);
    return ruleFigure(
      mam.value > carLimit.value ? "licence.gb.c1.minimumAge" : "licence.gb.b.minimumAge",
      day,
    );
  };
  const tooYoung = daysOfChange("licence.", first, last).find(
    (day) => fullYears(driver.born, day) < leastOn(day).value,
  );
  if (tooYoung === undefined) return [];
  const least = leastOn(tooYoung);
  const facts = { driver: driver.name, least };
  return [
    makeFinding("licence", "licence.tooYoung", "refuse", "law", {
      about: driver.id,
      facts,
      sources: [least.source!],
      mends: ["licence.otherDriver"],
    }),
  ];
}

function bigEnough(driver: Driver, hire: Hire, upTo: Figure, why: string): Finding[] {
  const { mam, first } = hire;
  if (mam.value <= upTo.value) return [];
  const over = figure(mam.value - upTo.value, "kg", "-", { mam: mam.value, upTo: upTo.value }, "computed");
  const facts = {
    driver: driver.name,
    mam,
    upTo,
    over,
    seventieth: anniversary(driver.born, ruleFigure("licence.gb.grandfather.endsAtAge", first).value),
  };
  const mends = ["licence.otherDriver", "licence.lighterVehicle"];
  const refused = makeFinding("licence", `licence.${why}`, "refuse", "law", {
    about: driver.id,
    facts,
    sources: upTo.source ? [upTo.source] : [],
    mends,
  });
  return mam.value <= euRuleKg() && upTo.value > 0 ? [refused, euRuleIsOff(driver)] : [refused];
}

/** the European rule for motor caravans reaches to this mass, kg; it is switched off in the data */
const euRuleKg = () =>
  Number(rulesInForce().rules.find(({ id }) => id === "licence.eu.motorhome.maxMamKg")?.value ?? 0);

const euRuleIsOff = (driver: Driver) =>
  makeFinding("licence", "licence.euRuleOff", "note", "law", {
    about: driver.id,
    facts: { driver: driver.name },
    sources: ["licence.eu.motorhome.maxMamKg"],
  });

function photocard(driver: Driver, { last }: Hire): Finding[] {
  const { photocardTo } = driver.licence;
  if (photocardTo === undefined || photocardTo >= last) return [];
  const facts = { driver: driver.name, photocardTo };
  return [
    makeFinding("licence", "licence.photocardLapses", "condition", "policy", {
      about: driver.id,
      facts,
      mends: ["licence.renewPhotocard"],
    }),
  ];
}
