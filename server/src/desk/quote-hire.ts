import { type Discount, type Quote, quoteHire, type RoomAnswer, withRules } from "@setfair/engine";
import { Refusal } from "../api/refusal.ts";
import { countriesOf } from "./gates.ts";
import { driversOf, type HireData, partOf } from "./hire-data.ts";

/** Prices a hire under the terms in force today; what is on the shelf then is asked apart (`stockOfHire`). Refused where no vehicle is chosen or the depot has no terms. */
export function quoteFor(
  data: HireData,
  extras: readonly { readonly id: string; readonly count: number }[],
  discount?: Discount & { readonly role: string },
): RoomAnswer<Quote | null> {
  const party = partOf(data, "party");
  if (data.vehicle === null)
    throw new Refusal("missing", { problems: [{ path: "vehicle", expected: "a vehicle on this hire" }] });
  if (data.terms === null || party === null)
    throw new Refusal("missing", { problems: [{ path: "terms", expected: "hire terms of the depot" }] });
  const input = {
    terms: data.terms.document,
    vehicleClass: data.vehicle.document.vehicleClass,
    from: data.from,
    to: data.to,
    today: data.today,
    party,
    drivers: Math.max(1, driversOf(data).length || (partOf(data, "asked")?.drivers ?? 1)),
    extras: extras.map(({ id, count }) => ({ id, count, free: count })),
    countries: [...countriesOf(data)],
    ...(discount === undefined ? {} : { discount }),
  };
  return withRules(data.ruleBook, () => quoteHire(input));
}
