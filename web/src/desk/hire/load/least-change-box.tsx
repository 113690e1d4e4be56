import type { LeastChange, LoadChangeStep } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import { Button } from "../../../parts/index.ts";
import { figureText, t } from "../../../parts/words.ts";

type Plan = Schemas["LoadPlan"];

const kg = (value: number): string => figureText({ value, unit: "kg" });

function stepText(step: LoadChangeStep): string {
  switch (step.kind) {
    case "leaveItem":
      return t("load.step.leaveItem", { name: step.name, kg: kg(step.byKg) });
    case "lessWater":
      return t("load.step.lessWater", { from: step.fromLitres, to: step.toLitres, kg: kg(step.byKg) });
    case "lessOfItem":
      return t("load.step.lessOfItem", { name: step.name, kg: kg(step.byKg), left: kg(step.leftKg) });
    case "moveItem":
      return t("load.step.moveItem", { name: step.name, place: t(`load.place.${step.to}`) });
    case "fewerCylinders":
      return t("load.step.fewerCylinders", { from: step.from, to: step.to, kg: kg(step.byKg) });
  }
}

const withItem = (plan: Plan, id: string, more: Partial<Plan["items"][number]>): Plan => ({
  ...plan,
  items: plan.items.map((item) => (`item.${item.id}` === id ? { ...item, ...more } : item)),
});

function applyStep(plan: Plan, step: LoadChangeStep): Plan {
  if (step.kind === "leaveItem")
    return { ...plan, items: plan.items.filter(({ id }) => `item.${id}` !== step.id) };
  if (step.kind === "lessOfItem") return withItem(plan, step.id, { massKg: step.leftKg });
  if (step.kind === "moveItem")
    return withItem(plan, step.id, { place: step.to, behindFrontAxleM: step.behindFrontAxleM });
  if (step.kind === "lessWater") return { ...plan, waterLitres: step.toLitres };
  return { ...plan, lpgCylinders: step.to };
}

/** The plan with the change made. */
export const applySteps = (plan: Plan, steps: readonly LoadChangeStep[]): Plan =>
  steps.reduce(applyStep, plan);

export interface LeastChangeBoxProps {
  readonly change: LeastChange;
  readonly plan: Plan;
  readonly onApply: (plan: Plan) => void;
  readonly isPending: boolean;
}

/** The fewest things to leave behind so that the load is legal, and the act that does it. */
export function LeastChangeBox({ change, plan, onApply, isPending }: LeastChangeBoxProps) {
  if (change.outcome === "none") return <p className="problem">{t("load.noChange")}</p>;
  return (
    <div className="conditions card">
      <h3>{t("load.whatWouldDo")}</h3>
      <ul>
        {change.steps.map((step) => (
          <li key={stepText(step)}>{stepText(step)}</li>
        ))}
      </ul>
      <p className="quiet">
        {t("load.after", {
          total: kg(change.after.totalKg),
          front: kg(change.after.frontKg),
          rear: kg(change.after.rearKg),
          complete: String(change.complete),
        })}
      </p>
      <Button look="main" onPress={() => onApply(applySteps(plan, change.steps))} isPending={isPending}>
        {t("load.apply")}
      </Button>
    </div>
  );
}
