import { type Figure, figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { shownChancePct } from "../../formulas/trip.ts";
import { ruleAt, ruleFigure, rulesDuring } from "../../rules/rule-at.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import { type FrostNight, type FrostSum, sumFrost } from "./frost-nights.ts";
import type { SeasonInput } from "./types.ts";
import { isUsual, type WinterDuty } from "./winter-duties.ts";
import { spanAround, spanMeets } from "./yearly-span.ts";

export interface TyreCase {
  readonly input: SeasonInput;
  readonly duty: WinterDuty;
  /** nights of the whole trip; null where nobody knows the places */
  readonly nights: readonly FrostNight[] | null;
}
type Worn = "summer" | "allSeason" | "winter" | undefined;

/** under this chance of any frost nothing is said: a tenth of what is told at all would be read as a warning */
const SAY_FROM = 0.025;

/**
 * What a winter rule means for the tyres that this vehicle wears. A rule that binds on some days whatever the
 * weather is broken by the day. One that binds only on wintry roads is not: it becomes a condition, with the
 * chance of frost, and a refusal by the depot's own policy where that chance is high. One that binds where signs
 * ask for it becomes a condition to stay off those roads.
 */
export function tyreFindings(at: TyreCase): Finding[] {
  const { input, duty } = at;
  const worn = wornOf(input);
  if (duty.thing === "slowWinterTyres") return worn === "summer" ? [] : [speedIndex(duty)];
  if (duty.thing === "chainsAboard") return input.snowChains === true ? [] : [chainsAboard(at)];
  const { weather, roads } = duty.rule.binds ?? {};
  const frost = weather === undefined ? null : frostOf(at);
  if (weather !== undefined && isUnlikely(frost, duty)) return [];
  if (duty.thing === "winterTyresOrChains" && input.snowChains === true) return [];
  if (duty.thing === "chains") return chains(at, frost, worn);
  if (worn === "winter") return [];
  if (worn === undefined) return [say(at, "season.tyresUnknown", "unchecked")];
  if (worn === "allSeason") return [seeMark(at)];
  if (weather !== undefined)
    return [
      wintry(at, roads === undefined ? "notOnWintryRoads" : "wintrySigned", frost),
      ...policy(at, frost),
    ];
  if (roads !== undefined) return [signed(at)];
  return [say(at, "season.winterTyres", "refuse", { facts: spanFacts(duty) })];
}

function wornOf({ vehicle, winterTyres }: SeasonInput): Worn {
  if (winterTyres !== undefined) return winterTyres ? "winter" : "summer";
  return specsOf(vehicle, "tyres")[0]?.season;
}

/** Frost on the nights in this country that lie in the rule's span; null where no place there is known. */
function frostOf({ duty: { rule }, nights }: TyreCase): FrostSum | null {
  const here = nights?.filter(({ country }) => country === rule.country) ?? [];
  if (here.length === 0) return null;
  return sumFrost(here.filter(({ date }) => spanMeets(String(rule.value), date, date)));
}

const isUnlikely = (frost: FrostSum | null, duty: WinterDuty) =>
  frost === null ? !isUsual(duty) : frost.chance < SAY_FROM;

function say(
  { duty: { rule } }: TyreCase,
  code: string,
  severity: Finding["severity"],
  more: { facts?: Finding["facts"]; mends?: string[]; basis?: Finding["basis"]; sources?: string[] } = {},
): Finding {
  return makeFinding("season", code, severity, more.basis ?? "law", {
    about: rule.country,
    facts: { country: rule.country, ...more.facts },
    sources: [rule.id, ...(more.sources ?? [])],
    mends: more.mends ?? ["season.fitWinterTyres"],
  });
}

/** First and last day of this winter's span. */
function spanFacts({ rule, stays }: WinterDuty): Finding["facts"] {
  const [stay] = stays;
  return { ...spanAround(String(rule.value), stay!.enter, stay!.leave) };
}

/** Nights with frost, of how many, and the chance of any, in steps of 5 %; empty where no place is known. */
function frostFacts(frost: FrostSum | null): Record<string, Figure | number> {
  if (frost === null) return {};
  const chance = shownChancePct(frost.chance);
  return {
    frostNights: Math.round(frost.expected),
    nights: frost.nights,
    chance: figure(chance, "%", "-", { nights: frost.nights, chance: frost.chance }, "computed"),
  };
}

/** Must not be driven while the road is wintry: told, printed and signed. */
function wintry(at: TyreCase, code: "notOnWintryRoads" | "wintrySigned", frost: FrostSum | null): Finding {
  const ends = frost === null ? "NotKnown" : "";
  return say(at, `season.${code}${ends}`, "condition", {
    facts: frostFacts(frost),
    sources: ["season.gb.roadFrostC"],
    mends: ["season.fitWinterTyres", "season.leaveStanding"],
  });
}

/** The depot's own policy where frost is likely; nothing where the weather is not known. */
function policy(at: TyreCase, frost: FrostSum | null): Finding[] {
  const from = ruleFigure("season.gb.summerTyres.refuseFromPercent", at.input.from.slice(0, 10));
  if (frost === null || 100 * frost.chance < from.value) return [];
  return [
    say(at, "season.summerTyresPolicy", "refuse", {
      basis: "policy",
      facts: { ...frostFacts(frost), from },
      sources: [from.source!],
    }),
  ];
}

/** Chains where a sign asks for them; on summer tyres more than that. */
function chains(at: TyreCase, frost: FrostSum | null, worn: Worn): Finding[] {
  const bare = worn === "summer" ? policy(at, frost) : [];
  if (at.input.snowChains === true) return bare;
  const mends = ["season.carryChains", "season.leaveStanding"];
  return [say(at, "season.chainsWhereSigned", "condition", { facts: frostFacts(frost), mends }), ...bare];
}

/** On signed roads whatever the weather; a stop in the mountains is one that such roads lead to. */
function signed(at: TyreCase): Finding {
  const { duty } = at;
  const mends = ["season.carryChains", "season.fitWinterTyres", "season.stayOffSigned"];
  const high = duty.rule.binds?.roads === "signedMountains" ? highStop(at) : undefined;
  if (high !== undefined)
    return say(at, "season.signedMountains", "unchecked", {
      facts: { ...spanFacts(duty), ...high },
      sources: [`season.${duty.rule.country.toLowerCase()}.mountainFromM`],
      mends: mends.slice(0, 2),
    });
  const where = duty.rule.binds?.roads ?? "signed";
  return say(at, "season.signedRoads", "condition", {
    facts: { ...spanFacts(duty), where },
    mends,
  });
}

function highStop({ duty: { rule, stays }, input }: TyreCase): Finding["facts"] | undefined {
  const limit = ruleAt(`season.${rule.country.toLowerCase()}.mountainFromM`, stays[0]!.enter);
  if (limit === undefined) return undefined;
  const [high] = (input.trip?.stops ?? [])
    .filter(
      ({ place, arrive, leave }) =>
        place.country === rule.country &&
        (place.elevationM ?? 0) >= Number(limit.value) &&
        spanMeets(String(rule.value), arrive.slice(0, 10), leave.slice(0, 10)),
    )
    .sort((a, b) => b.place.elevationM! - a.place.elevationM!);
  if (high === undefined) return undefined;
  const { name, elevationM = 0 } = high.place;
  return { stop: name, height: figure(elevationM, "m", "-", { place: name }, "declared") };
}

/** All-season tyres count by their mark, which somebody has to look at. */
function seeMark(at: TyreCase): Finding {
  const { rule, stays } = at.duty;
  const id = `season.${rule.country.toLowerCase()}.tyreMark`;
  const [stay] = stays;
  const marks = rulesDuring(id, stay!.enter, stays.at(-1)!.leave);
  const snowOnly = marks.some(({ value }) => value === "3PMSF");
  const mark = marks.length === 0 ? "notRead" : snowOnly ? "snowflake" : "either";
  return say(at, "season.seeSnowflake", "condition", {
    facts: { mark },
    sources: marks.length === 0 ? [] : [id],
    mends: ["season.seeSnowflake"],
  });
}

const chainsAboard = (at: TyreCase): Finding =>
  say(at, "season.chainsAboard", "unchecked", {
    facts: spanFacts(at.duty),
    mends: ["season.carryChains"],
  });

/** No description says the speed index of the tyres. */
const speedIndex = ({ rule }: WinterDuty): Finding =>
  makeFinding("season", "season.factNotChecked", "note", "law", {
    about: rule.id,
    facts: { country: rule.country, fact: "speedIndex" },
    sources: [rule.id],
    mends: ["countries.askLocally"],
  });
