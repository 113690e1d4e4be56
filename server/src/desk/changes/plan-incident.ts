import { figure, gbp, refundNights } from "@setfair/engine";
import { badField } from "../../api/refusal.ts";
import { toJson } from "../documents.ts";
import { type HireData, partOf } from "../hire-data.ts";
import { instantOf, localOf } from "../local-time.ts";
import type { DefectDocument } from "../vehicle-upkeep.ts";
import { nextHires, personOf } from "./next-hires.ts";
import {
  type Ask,
  type EffectLine,
  type EffectTask,
  line,
  NOTHING,
  type Plan,
  type Planner,
  task,
} from "./types.ts";

type IncidentAsk = Ask<"breakdown"> | Ask<"accident">;
/** How far ahead the next hires of a vehicle that cannot be driven are looked up (common practice, no source). */
const AHEAD_MS = 7 * 86_400_000;

/** Something failed on the road, or was run into: the record, whom to tell, nights lost, the next hires. */
async function planIncident(ask: IncidentAsk): Promise<Plan> {
  const { data, change } = ask;
  const at = instantOf(change.at, data.depot.timeZone, "at");
  if (at > data.now) throw badField("at", "expected a time that is over");
  if (at < data.row.from && data.row.stage !== "returned")
    throw badField("at", `expected a time from ${data.from} on`);
  const { money, refund } = nightsOf(data, ask);
  return {
    effects: {
      ...NOTHING,
      toDo: [...tasksOf(ask), ...refund],
      money,
      people: change.drivable ? [] : [...(await peopleOf(ask))],
      says: [...saysOf(ask)],
    },
    write: async ({ store, by }) => {
      if (change.drivable || data.row.vehicleId === null) return {};
      const document: DefectDocument = {
        what: change.what,
        where: change.where,
        notedBy: by,
        photograph: null,
      };
      const defect = await store.defects.add({
        vehicleId: data.row.vehicleId,
        hireId: data.row.id,
        class: "safety",
        document: toJson(document),
        by,
      });
      return { defectId: defect.id };
    },
  };
}
export const planBreakdown: Planner<"breakdown"> = planIncident;
export const planAccident: Planner<"accident"> = planIncident;

function nightsOf(data: HireData, { change }: IncidentAsk) {
  const quote = partOf(data, "quote")?.answer.result ?? null;
  if (quote === null || change.nightsLost === 0) return { money: null, refund: [] };
  const { worth, due } = refundNights(quote, change.nightsLost, change.cause);
  const back = due?.pence ?? 0;
  const amount = figure(worth.pence, "pence", "-", { nights: change.nightsLost }, "computed", "practice");
  const refund =
    due === null
      ? [task(data, "decideCause", null, { amount })]
      : back > 0
        ? [task(data, "refund", null, { amount })]
        : [];
  const { total } = quote;
  return {
    money: {
      before: total,
      after: gbp(total.pence - back),
      hirer: gbp(back === 0 ? 0 : -back),
      ours: gbp(0),
    },
    refund,
  };
}

function* tasksOf({ data, change }: IncidentAsk): Iterable<EffectTask> {
  const isAccident = change.kind === "accident";
  if (isAccident && change.insurerToldAt === null) yield task(data, "insurerIncident", data.today);
  if (isAccident) yield task(data, "statementForm", data.today);
  yield task(data, "photographs", data.today);
  if (!change.drivable) {
    yield task(data, "recovery", data.nowLocal);
    yield task(data, "anotherVehicle", data.nowLocal);
  }
  if (change.cause === "unknown" && change.nightsLost === 0) yield task(data, "decideCauseLater", null);
}

function* saysOf({ change }: IncidentAsk): Iterable<EffectLine> {
  yield line(change.kind === "accident" ? "accidentFirst" : "breakdownFirst");
  if (change.kind === "accident") yield line("admitNothing");
  else yield line("whoIsCalled");
  yield line(`cause_${change.cause}`);
  if (!change.drivable) yield line("defectNoted");
}

async function peopleOf(ask: IncidentAsk) {
  const { store, data } = ask;
  const to = new Date(Date.parse(data.now) + AHEAD_MS).toISOString();
  const next = await nextHires(store, data, { from: data.row.to, to });
  return Promise.all(
    next.map(({ row }) =>
      personOf(ask, row, line("vehicleAtRisk", { from: localOf(row.from, data.depot.timeZone) }), true),
    ),
  );
}
