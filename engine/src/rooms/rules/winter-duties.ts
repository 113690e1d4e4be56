import type { IsoDate } from "../../base/time.ts";
import type { Rule } from "../../rules/rule.ts";
import { isRuleFor } from "../../rules/rule-applies.ts";
import { rulesDuring } from "../../rules/rule-at.ts";
import { rulesInForce } from "../../rules/rule-book.ts";
import { caseFacts } from "./case-facts.ts";
import type { SeasonInput } from "./types.ts";
import { spanMeets, spanOfRuleMeets } from "./yearly-span.ts";

/** What a winter rule asks for, by the third word of its id. */
export const WINTER_THINGS = [
  "winterTyres",
  "winterTyresOrChains",
  "chains",
  "chainsAboard",
  "slowWinterTyres",
] as const;
export type WinterThing = (typeof WINTER_THINGS)[number];

/** A winter rule that meets a day of a stay and is for this vehicle. */
export interface WinterDuty {
  readonly rule: Rule;
  readonly thing: WinterThing;
  readonly stays: readonly { readonly enter: IsoDate; readonly leave: IsoDate }[];
}

/** What of a hire decides which winter rules meet it. */
export type WinterRoute = Pick<SeasonInput, "vehicle" | "from" | "to" | "countries" | "stays">;

const thingOf = ({ id }: Rule): WinterThing | undefined =>
  WINTER_THINGS.find((thing) => thing === id.split(".")[2]);

/**
 * The winter rules of the route for this vehicle: of each the version that meets a day on which the vehicle is in
 * its country. A country without known days is taken for the whole hire.
 */
export function winterDuties(input: WinterRoute): readonly WinterDuty[] {
  const facts = caseFacts(input.vehicle);
  const ids = rulesInForce()
    .rules.filter((rule) => thingOf(rule) !== undefined && input.countries.includes(rule.country))
    .map(({ id }) => id);
  const whole = { enter: input.from.slice(0, 10), leave: input.to.slice(0, 10) };
  return [...new Set(ids)].flatMap((id): WinterDuty[] => {
    for (const rule of rulesDuring(id, whole.enter, whole.leave)) {
      if (!isRuleFor(rule, facts)) continue;
      const known = input.stays?.filter(({ country }) => country === rule.country) ?? [];
      const stays = (known.length === 0 ? [whole] : known).filter(({ enter, leave }) =>
        spanOfRuleMeets(rule, enter, leave),
      );
      if (stays.length > 0) return [{ rule, thing: thingOf(rule)!, stays }];
    }
    return [];
  });
}

/** Whether a stay meets days on which wintry roads are usual there: for where nobody knows the weather. */
export function isUsual({ rule, stays }: WinterDuty): boolean {
  const usually = rule.binds?.usually;
  const spans = usually === undefined ? frostSpans() : [usually];
  return stays.some(({ enter, leave }) => spans.some((span) => spanMeets(span, enter, leave)));
}

const frostSpans = () =>
  rulesInForce()
    .rules.filter(({ id, off }) => id === "season.gb.frost" && off === undefined)
    .map(({ value }) => String(value));
