import type { StopPlan } from "@setfair/engine";

type Asked = { readonly stops: readonly { readonly settings?: unknown }[] } | null;

/** Whether the plan asks for nothing else than was asked; water on the road apart. */
export function isAsAsked({ cards, trip }: Pick<StopPlan, "cards" | "trip">, asked: Asked): boolean {
  const sets = (stops: readonly { readonly settings?: unknown }[]) =>
    JSON.stringify(stops.map(({ settings }) => settings ?? {}));
  return (
    cards.every(({ added, dropped }) => added.length + dropped.length === 0) &&
    sets(trip.stops) === sets(asked?.stops ?? [])
  );
}

/** Whether there is anything to take in a plan: another act or setting, or less effort and trouble than as asked. */
export function isBetter(plan: Pick<StopPlan, "cards" | "trip" | "objective">, asked: Asked): boolean {
  return !isAsAsked(plan, asked) || plan.objective.withPlan.value < plan.objective.asAsked.value;
}
