import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../base/years.ts";
import { COUNTRIES_KNOWN } from "../../rules/country-rules.ts";
import type { Rule } from "../../rules/rule.ts";
import { RULES } from "../../rules/rule-at.ts";
import { composeRuleBook, type RuleChange, withRules } from "../../rules/rule-book.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import { ROADS } from "./abroad-types.ts";
import { checkCountries } from "./check-countries.ts";

/**
 * The rules of a country read slowly, day by day, with nothing of the rooms: what holds on each day of a stay for
 * this vehicle, and of what differs between days the one that asks for most.
 */
interface Stay {
  readonly country: string;
  readonly enter: string;
  readonly leave: string;
  readonly vehicle: VehicleDescription;
  readonly overhang: boolean;
  readonly plateShowsUk: boolean;
}
type Case = NonNullable<Rule["when"]>;

function isCase(when: Case, { vehicle, overhang, plateShowsUk }: Stay): boolean {
  const { masses, dimensions } = vehicle;
  const is = (asked: unknown, has: unknown) => asked === undefined || asked === has;
  const heavyEnough = () => {
    if (when.mass === undefined) return true;
    const kg =
      when.mass === "mam"
        ? masses.mamKg
        : when.mass === "technical"
          ? masses.technicalMaxKg
          : masses.unladenKg;
    if (kg === undefined) return when.toKg === undefined;
    return kg > (when.aboveKg ?? -1) && kg <= (when.toKg ?? 99_999);
  };
  const registered =
    (when.registeredFrom ?? "0000") <= vehicle.firstRegistered &&
    vehicle.firstRegistered < (when.registeredBefore ?? "9999");
  const tall = when.orHeightAboveM !== undefined && dimensions.heightM > when.orHeightAboveM;
  const rest =
    heavyEnough() &&
    is(when.category, vehicle.category) &&
    is(when.fuel, vehicle.fuel) &&
    is(when.overhang, overhang) &&
    is(when.plateLacksUk, !plateShowsUk) &&
    dimensions.heightM <= (when.heightToM ?? 99) &&
    masses.technicalMaxKg > (when.technicalAboveKg ?? 0);
  return registered && (tall || rest);
}

function daysOf({ enter, leave }: Stay): string[] {
  const days: string[] = [];
  for (let day = enter; day <= leave; day = addDays(day, 1)) days.push(day);
  return days;
}

/** Rules of a topic on one day for this vehicle. */
const on = (rules: readonly Rule[], topic: string, day: string, stay: Stay) =>
  rules.filter(
    (rule) =>
      rule.off === undefined &&
      rule.id.split(".")[0] === topic &&
      rule.country === stay.country &&
      rule.validFrom <= day &&
      day <= (rule.validTo ?? "9999") &&
      (rule.when === undefined || isCase(rule.when, stay)) &&
      (rule.exempt === undefined || !isCase(rule.exempt, stay)),
  );

function slowly(all: readonly Rule[], stay: Stay) {
  const rules = all.filter(({ country }) => country === stay.country);
  const days = daysOf(stay);
  const limits = ROADS.flatMap((road) => {
    const each = days.flatMap((day) => {
      const all = on(rules, "speed", day, stay).filter(({ id }) => id.endsWith(`.${road}`));
      const rule = all.find(({ when }) => when !== undefined) ?? all[0];
      return rule === undefined ? [] : [Number(rule.value)];
    });
    return each.length === 0 ? [] : [[road, Math.min(...each)]];
  });
  const kit = new Set(
    days.flatMap((day) =>
      on(rules, "kit", day, stay)
        .filter(({ value }) => value === "required")
        .map(({ id }) => id.split(".")[2]),
    ),
  );
  const doBy = new Map<string, string>();
  for (const day of days) {
    const kitToGet = on(rules, "kit", day, stay).filter(
      ({ leadDays, value }) => leadDays !== undefined && value === "required",
    );
    const asked = [...on(rules, "zone", day, stay), ...on(rules, "toll", day, stay)].filter(({ value }) =>
      ["certificate", "sticker", "register", "buyBefore"].includes(String(value)),
    );
    for (const { id, leadDays = 0 } of [...kitToGet, ...asked]) {
      const by = addDays(day, -leadDays);
      if (by < (doBy.get(id) ?? "9999")) doBy.set(id, by);
    }
  }
  const alcohol = days.flatMap((day) =>
    on(rules, "alcohol", day, stay)
      .filter(({ id }) => id.endsWith(".limit"))
      .map(({ value }) => Number(value)),
  );
  return {
    limits: Object.fromEntries(limits),
    kit: [...kit].sort(),
    doBy: Object.fromEntries([...doBy].sort()),
    alcohol: alcohol.length === 0 ? null : Math.min(...alcohol),
  };
}

function byTheRoom({ country, enter, leave, vehicle, overhang, plateShowsUk }: Stay) {
  const { result, findings } = checkCountries({
    vehicle,
    home: "XX",
    route: [{ country, enter, leave }],
    today: "2020-01-01",
    papers: { originalDocument: true },
    kitAboard: [],
    got: [],
    overhang,
    plateShowsUk,
  });
  const [card] = result.cards;
  return {
    limits: Object.fromEntries(card!.speeds.map(({ road, limit }) => [road, limit.value])),
    kit: findings.flatMap(({ code, about }) => (code === "countries.kit" ? [about] : [])).sort(),
    doBy: Object.fromEntries(result.tasks.map(({ ruleId, doBy }) => [ruleId, doBy] as const).sort()),
    alcohol: card!.alcohol?.limit.value ?? null,
  };
}

const day = (from: number, to: number) =>
  fc.integer({ min: from, max: to }).map((n) => addDays("2023-06-01", n));
const mass = fc.constantFrom(3000, 3499, 3500, 3501, 4250);
const vehicles = fc
  .record({
    mamKg: mass,
    over: fc.constantFrom(0, 150),
    unladenKg: fc.constantFrom(undefined, 3050, 3051),
    firstRegistered: fc.constantFrom(
      "2010-12-31",
      "2011-01-01",
      "2014-12-31",
      "2016-09-01",
      "2023-11-30",
      "2023-12-01",
    ),
    category: fc.constantFrom<"M1" | "N1">("M1", "N1"),
    fuel: fc.constantFrom<"diesel" | "petrol">("diesel", "petrol"),
    heightM: fc.constantFrom(2.6, 3, 3.01),
  })
  .map(({ mamKg, over, unladenKg, heightM, ...rest }) => {
    const { masses, dimensions } = panelVan();
    return panelVan({
      ...rest,
      dimensions: { ...dimensions, heightM },
      masses: {
        ...masses,
        mamKg,
        technicalMaxKg: mamKg + over,
        ...(unladenKg === undefined ? {} : { unladenKg }),
      },
    });
  });
const stays = fc
  .record({
    country: fc.constantFrom(...COUNTRIES_KNOWN),
    enter: day(0, 2200),
    nights: fc.integer({ min: 0, max: 40 }),
    vehicle: vehicles,
    overhang: fc.boolean(),
    plateShowsUk: fc.boolean(),
  })
  .map(({ nights, ...stay }): Stay => ({ ...stay, leave: addDays(stay.enter, nights) }));

/** A depot's own versions of rules of that country, about the days of the stay. */
const changesFor = ({ country, enter }: Stay) =>
  fc
    .array(
      fc.record({
        at: fc.nat(),
        start: fc.integer({ min: -5, max: 30 }),
        days: fc.option(fc.integer({ min: 0, max: 20 })),
        number: fc.constantFrom(20, 55, 95, 140),
        word: fc.nat(),
        leadDays: fc.option(fc.integer({ min: 0, max: 60 })),
      }),
      { maxLength: 4 },
    )
    .map((made): RuleChange[] => {
      const topics = ["speed", "kit", "zone", "toll", "alcohol"];
      const theirs = RULES.filter(
        ({ id, off, ...rule }) =>
          rule.country === country && off === undefined && topics.includes(id.split(".")[0]!),
      );
      return made.map(({ at, start, days, number, word, leadDays }) => {
        const { validTo: _, leadDays: __, ...rule } = theirs[at % theirs.length]!;
        const validFrom = addDays(enter, start);
        const words = {
          kit: ["required", "advised"],
          zone: ["none", "register", "sticker"],
          toll: ["free", "buyBefore"],
        }[rule.id.split(".")[0] as "kit"];
        return {
          kind: "correct",
          rule: {
            ...rule,
            value: typeof rule.value === "number" ? number : (words?.[word % words.length] ?? rule.value),
            validFrom,
            ...(days === null ? {} : { validTo: addDays(validFrom, days) }),
            ...(leadDays === null ? {} : { leadDays }),
          },
        };
      });
    });

describe("the rules of a country, read again slowly day by day", () => {
  it("give the same limits, kit, days to do things by and alcohol as the room, with the rules as they ship", () => {
    fc.assert(
      fc.property(stays, (stay) => {
        expect(byTheRoom(stay)).toEqual(slowly(RULES, stay));
      }),
      { numRuns: 250 },
    );
  });

  it("and with a depot's own versions that begin, end and change what they ask during the stay", () => {
    fc.assert(
      fc.property(
        stays.chain((stay) => changesFor(stay).map((changes) => ({ stay, changes }))),
        ({ stay, changes }) => {
          const book = composeRuleBook("own", changes);
          expect(withRules(book, () => byTheRoom(stay))).toEqual(slowly(book.rules, stay));
        },
      ),
      { numRuns: 250 },
    );
  });
});
