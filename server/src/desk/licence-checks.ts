import { addDays, checkLicence, type Driver, ruleFigure, ruleText, withRules } from "@setfair/engine";
import type { z } from "zod";
import type { driverChecksSchema } from "../api/schemas/drivers.ts";
import { type LicenceChecksDocument, versionOfEntry } from "./documents.ts";
import { countriesOf } from "./gates.ts";
import { driversOf, type HireData, partOf } from "./hire-data.ts";
import { numbersGoneOn, particularsOf } from "./particulars.ts";

const NO_CHECKS: LicenceChecksDocument = { codes: {}, checks: [] };
export const checksOf = (data: HireData): LicenceChecksDocument => partOf(data, "licenceChecks") ?? NO_CHECKS;

/** Under which a code lies sealed beside the licence numbers. */
export const codeKey = (driverId: string): string => `${driverId}/code`;

/** Days for which a check code lives, and whether one can be had for this licence. */
export const codeDays = (data: HireData): number =>
  withRules(data.ruleBook, () => ruleFigure("licence.gb.checkCodeDays", data.today).value);
export const hasCode = (data: HireData, { licence }: Driver): boolean =>
  withRules(data.ruleBook, () => ruleText("licence.gb.checkCode.issuers", data.today))
    .split(",")
    .includes(licence.issuedBy);

/** First day on which a code made then still lives when the keys go. */
export const askFrom = (data: HireData): string => addDays(data.from.slice(0, 10), -codeDays(data));

export function driverChecks(
  data: HireData,
  nameOf: (id: string) => string,
): z.input<typeof driverChecksSchema> {
  const { codes, checks } = checksOf(data);
  const days = codeDays(data);
  const entitled = entitlements(data);
  const given = particularsOf(data).drivers;
  return {
    drivers: driversOf(data).map((driver) => {
      const code = codes[driver.id];
      const lastDay = code === undefined ? "" : addDays(code.madeOn, days);
      return {
        driverId: driver.id,
        name: driver.name,
        mayDrive: entitled.get(driver.id) ?? null,
        askFrom: askFrom(data),
        hasCode: hasCode(data, driver),
        address: given[driver.id]?.address ?? null,
        numberUntil: given[driver.id]?.hasNumber === true ? numbersGoneOn(data) : null,
        numberGiven: numberGiven(given[driver.id]?.numberGiven, nameOf),
        versions: { particulars: versionOfEntry(given[driver.id]), code: versionOfEntry(code) },
        code: code === undefined ? null : { madeOn: code.madeOn, lastDay, isUsable: data.today <= lastDay },
        checks: checks
          .filter(({ driverId }) => driverId === driver.id)
          .map(({ driverId: _, by, ...check }) => ({ ...check, by: nameOf(by) })),
      };
    }),
  };
}

const numberGiven = (
  given: { readonly by: string; readonly at: string } | undefined,
  nameOf: (id: string) => string,
) => (given === undefined ? null : { by: nameOf(given.by), at: given.at });

function entitlements(data: HireData): ReadonlyMap<string, "yes" | "no" | "unchecked"> {
  if (data.vehicle === null) return new Map();
  const vehicle = data.vehicle.document.description;
  const { from, to, today } = data;
  const input = {
    drivers: [...driversOf(data)],
    vehicle,
    from,
    to,
    today,
    countries: [...countriesOf(data)],
  };
  const { result } = withRules(data.ruleBook, () => checkLicence(input));
  return new Map(result.drivers.map(({ driverId, mayDrive }) => [driverId, mayDrive]));
}

/** Drivers nobody has looked up in the time in which a code lives before the keys. */
export function driversToAsk(data: HireData): readonly Driver[] {
  const from = askFrom(data);
  if (data.today < from) return [];
  return driversOf(data).filter((driver) => {
    const { checkedOn } = driver.licence;
    return hasCode(data, driver) && (checkedOn === undefined || checkedOn < from);
  });
}
