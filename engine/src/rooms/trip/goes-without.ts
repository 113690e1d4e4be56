import { figure } from "../../base/figure.ts";
import type { Finding, Mend } from "../../base/finding.ts";
import { isOffered } from "./do-acts.ts";
import type { TripPlan } from "./plan-trip.ts";
import type { SpreadOf } from "./spread-of.ts";
import type { Without } from "./without.ts";

/** From this share of what is asked for on, the trip only goes with a change; below the other nothing is said: policy of the tool, practice. */
const CONDITION_FROM = 0.2;
const NOTE_FROM = 0.05;
/** a stop is named where more than this share is not served there */
const STOP_FROM = 0.5;

const CODES: Readonly<Record<string, string>> = { meals: "trip.withoutMeals" };

/** An inverter that the hob may draw on: where it cooks nothing all the same, what feeds the inverter is down. */
const feedsHob = ({ systems }: TripPlan): boolean =>
  systems.some(({ kind, spec }) => kind === "inverter" && spec.runs !== "sockets");

/** What nobody serves and no store shows: an electric hob with neither a post nor an inverter behind it cooks nothing. */
export function goesWithout(plan: TripPlan, spread: SpreadOf, without: readonly Without[]): Finding[] {
  return without.flatMap((one): Finding[] => {
    const code = CODES[one.what];
    const asked = spread.mean(one.asked);
    const share = asked > 0 ? spread.mean(one.unmet) / asked : 0;
    if (code === undefined || share < NOTE_FROM) return [];
    const stops = plan.input.trip.stops.filter(
      (_, k) => one.askedAt[k]! > 0 && one.unmetAt[k]! > STOP_FROM * one.askedAt[k]!,
    );
    return [
      {
        code,
        gate: "resources",
        severity: share >= CONDITION_FROM ? "condition" : "note",
        basis: "physics",
        about: one.id,
        facts: {
          share: figure(Math.round(share * 20) * 5, "%", "-", { runs: plan.input.runs }, "computed"),
          stops: stops.length,
          inverter: feedsHob(plan) ? "yes" : "no",
          stop: stops[0]?.place.name ?? "none",
        },
        sources: [],
        mends: [
          ...stops
            .filter((stop) => !stop.acts.includes("plugIn") && isOffered(stop, "plugIn"))
            .map((stop): Mend => ({ code: "trip.plugIn", facts: { stop: stop.place.name } })),
          { code: "trip.eatCold", facts: {} },
        ],
      },
    ];
  });
}
