import type { OpenHire } from "../../api/handlers/change-hire.ts";
import { openHire } from "../../api/handlers/change-hire.ts";
import { badField } from "../../api/refusal.ts";
import { toJson } from "../documents.ts";
import { type HireData, readHireData } from "../hire-data.ts";
import { stopsIt } from "./as-it-would-be.ts";
import { planVehicle } from "./plan-vehicle.ts";
import type { Ask, ChangeDocument, ChangeOf, EffectLine, Plan } from "./types.ts";
import { line } from "./types.ts";

type Moves = ChangeOf<"extension">["moves"];

export interface GivesWay {
  readonly hireId: string;
  readonly plan: Plan;
  readonly change: ChangeOf<"vehicle">;
}

/** Other hires that go to another vehicle, each as the procedure for another vehicle would have it. */
export async function planMoves(
  { store, now, data }: Pick<Ask<"extension">, "store" | "now" | "data">,
  moves: Moves,
): Promise<readonly GivesWay[]> {
  const planned: GivesWay[] = [];
  for (const { hireId, vehicleId } of moves) {
    if (hireId === data.row.id)
      throw badField("moves", "expected other hires than the one that stays longer");
    const other = await readHireData(store, hireId, now);
    if (other.row.vehicleId !== data.row.vehicleId || other.row.stage !== "booked")
      throw badField("moves", "expected hires that are booked on this vehicle");
    const change = { kind: "vehicle", vehicleId, reason: data.row.number, offTheRoadTo: null } as const;
    planned.push({ hireId, change, plan: await planVehicle({ store, now, data: other, change }) });
  }
  return planned;
}

export const moveStops = (moves: readonly GivesWay[]): readonly EffectLine[] =>
  moves.some(({ plan }) => stopsIt(plan.effects.findings)) ? [line("moveRefused")] : [];

/** What their papers lose, in one line each. */
export const moveVoids = (
  moves: readonly GivesWay[],
  nameOf: (hireId: string) => string,
): readonly EffectLine[] =>
  moves.map(({ hireId, plan }) =>
    line("ofOther", {
      reference: nameOf(hireId),
      count: plan.effects.voided.length,
      tasks: plan.effects.toDo.length,
    }),
  );

/** Moves them, before the hire that needs the room is written. */
export async function writeMoves(
  hire: OpenHire,
  ask: { readonly now: Date },
  moves: readonly GivesWay[],
): Promise<void> {
  for (const { hireId, change } of moves) {
    const data: HireData = await readHireData(hire.store, hireId, ask.now);
    const plan = await planVehicle({ store: hire.store, now: ask.now, data, change });
    const kept = await plan.write(openHire(hire.store, data, hire.by));
    await hire.store.changes.add({
      hireId,
      kind: "vehicle",
      document: toJson({ change, toDo: plan.effects.toDo, ...kept } satisfies ChangeDocument),
      by: hire.by,
    });
    await hire.store.audit.add({ by: hire.by, act: "hire.changed.vehicle", about: hireId });
  }
}
