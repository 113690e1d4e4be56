import { hashJson } from "@setfair/records";
import { Refusal } from "../../api/refusal.ts";
import type { HireStage, Store } from "../../store/types.ts";
import { toJson } from "../documents.ts";
import { type HireData, readHireData } from "../hire-data.ts";
import { stopsIt } from "./as-it-would-be.ts";
import { planEarly } from "./plan-early.ts";
import { planExtension } from "./plan-extension.ts";
import { planAccident, planBreakdown } from "./plan-incident.ts";
import { planLate } from "./plan-late.ts";
import { planNoShow } from "./plan-no-show.ts";
import { planNotice } from "./plan-notice.ts";
import { planDriverAbsent, planParty } from "./plan-people.ts";
import { planTeamIll } from "./plan-team.ts";
import { planVehicle } from "./plan-vehicle.ts";
import type { ChangeKind, Effects, HireChange, Plan, Planner } from "./types.ts";

const PLANNERS: { readonly [Kind in ChangeKind]: Planner<Kind> } = {
  vehicle: planVehicle,
  extension: planExtension,
  late: planLate,
  early: planEarly,
  party: planParty,
  driverAbsent: planDriverAbsent,
  teamIll: planTeamIll,
  noShow: planNoShow,
  breakdown: planBreakdown,
  accident: planAccident,
  notice: planNotice,
};

const ON_THE_ROAD: readonly ChangeKind[] = [
  "late",
  "extension",
  "early",
  "breakdown",
  "accident",
  "vehicle",
  "notice",
  "teamIll",
];
const BACK: readonly ChangeKind[] = ["notice", "accident"];
const POSSIBLE: Readonly<Partial<Record<HireStage, readonly ChangeKind[]>>> = {
  booked: ["vehicle", "extension", "early", "party", "driverAbsent", "noShow", "teamIll"],
  handedOver: ON_THE_ROAD,
  onHire: ON_THE_ROAD,
  returned: BACK,
  settled: BACK,
  closed: BACK,
};
/** What may have changed about a hire at its stage, the likeliest first. */
export const possibleChanges = (stage: HireStage): readonly ChangeKind[] => POSSIBLE[stage] ?? [];

export interface Planned {
  readonly data: HireData;
  readonly plan: Plan;
  readonly effects: Effects;
}

/** Asks the procedure for this change what it would do. Only reads. */
export async function planChange(store: Store, id: string, change: HireChange, now: Date): Promise<Planned> {
  const data = await readHireData(store, id, now);
  if (!possibleChanges(data.row.stage).includes(change.kind))
    throw new Refusal("wrongStage", {
      problems: [{ path: "kind", expected: possibleChanges(data.row.stage).join(" or ") || "nothing" }],
    });
  // the union is taken apart by its kind, and the table has the planner of that kind
  const planner = PLANNERS[change.kind] as Planner<ChangeKind>;
  const plan = await planner({ store, data, change: change as never, now });
  const { effects } = plan;
  return {
    data,
    plan,
    effects: {
      kind: change.kind,
      // what does not move by itself: a minute later it is still what was seen
      hash: hashJson(toJson({ change, version: data.row.version, effects: stable(effects) })),
      canConfirm: effects.stops.length === 0 && !stopsIt(effects.findings),
      ...effects,
    },
  };
}

/** Without the clock: what is due now, or starts from now, carries the minute at which it was looked at. */
const stable = ({ toDo, people, ...rest }: Plan["effects"]) => ({
  ...rest,
  toDo: toDo.map(({ code, facts }) => ({ code, facts })),
  people: people.map(({ hireId, code, offers }) => ({ hireId, code, offers })),
});
