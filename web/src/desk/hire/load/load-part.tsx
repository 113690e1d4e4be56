import type { VehicleDescription } from "@setfair/engine";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, NumberField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { LoadAnswer } from "./load-answer.tsx";
import { emptyLoad } from "./load-draft.ts";
import { LoadSeats } from "./load-seats.tsx";
import { LoadThings, type LoadThingsProps } from "./load-things.tsx";
import { useLoadAnswer } from "./use-load-answer.ts";
import "./load.css";

type Plan = Schemas["LoadPlan"];

/** What is carried and where; both axles against their limits as it changes; the least change that makes it legal. */
export default function LoadPart({ page }: PartProps) {
  const { id } = page.hire;
  const draft = useGuardedDraft<Plan>(`load.${id}`, {
    value: page.load?.plan ?? emptyLoad(page),
    version: page.versions.load,
  });
  const [chosen, choose] = useState<string | null>(null);
  const answer = useLoadAnswer(page, draft.value);
  const save = useHireAct(
    (plan: Plan) =>
      keepPart(id, () =>
        take(
          client.PUT("/api/hires/{id}/load", {
            params: { path: { id }, query: { basedOn: draft.basedOn } },
            body: plan,
          }),
        ),
      ),
    draft.done,
  );
  if (page.vehicle === null) return <p className="card">{t("load.needsVehicle")}</p>;
  // the server sends a checked description
  const vehicle = page.vehicle.description as VehicleDescription;
  const shared = { vehicle, plan: draft.value, set: draft.set };
  return (
    <>
      {answer !== null && (
        <LoadAnswer
          answer={answer}
          vehicle={vehicle}
          plan={draft.value}
          chosen={chosen}
          onPlan={draft.set}
          onApply={(plan) => {
            draft.set(plan);
            save.mutate(plan);
          }}
          isPending={save.isPending}
        />
      )}
      <section className="card sheet" aria-labelledby="carried-title">
        <h2 id="carried-title">{t("load.carried")}</h2>
        <LoadSeats page={page} {...shared} />
        <p className="quiet">{t("load.seatsNote", { n: draft.value.seats.length })}</p>
        <LoadStores {...shared} error={save.error} />
        <LoadThings {...shared} error={save.error} chosen={chosen} choose={choose} />
      </section>
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
      <div className="sheet-foot">
        <Button look="main" onPress={() => save.mutate(draft.value)} isPending={save.isPending}>
          {t(save.isPending ? "desk.sending" : "load.save")}
        </Button>
        {draft.isDirty && (
          <Button look="quiet" onPress={draft.done}>
            {t("desk.dropChanges")}
          </Button>
        )}
      </div>
    </>
  );
}

/** Water, fuel and gas on the road. */
function LoadStores({ plan, set, error }: Pick<LoadThingsProps, "plan" | "set" | "error">) {
  return (
    <div className="sheet-fields">
      <NumberField
        label={t("load.water")}
        unit="L"
        min={0}
        max={400}
        value={plan.waterLitres}
        onChange={(n) => set({ ...plan, waterLitres: n ?? 0 })}
        error={problemAt(error, "waterLitres")}
      />
      <NumberField
        label={t("load.fuel")}
        min={0}
        max={1}
        step={0.05}
        format={{ style: "percent" }}
        value={plan.fuelShare}
        onChange={(n) => set({ ...plan, fuelShare: n ?? 0 })}
        error={problemAt(error, "fuelShare")}
      />
      <NumberField
        label={t("load.cylinders")}
        min={0}
        max={4}
        stepper
        value={plan.lpgCylinders}
        onChange={(n) => set({ ...plan, lpgCylinders: n ?? 0 })}
        error={problemAt(error, "lpgCylinders")}
      />
    </div>
  );
}
