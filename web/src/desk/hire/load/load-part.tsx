import type { LoadResult } from "@setfair/engine";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import {
  Button,
  FigureTap,
  FindingsList,
  NumberField,
  ScrollX,
  TextField,
  TickField,
} from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useDraft } from "../../use-draft.ts";
import { type HirePageData, type PartProps, useHireAct } from "../use-hire.ts";
import { LeastChangeBox } from "./least-change-box.tsx";
import { emptyLoad } from "./load-draft.ts";
import { WeighLine } from "./weigh-line.tsx";

type Plan = Schemas["LoadPlan"];

/** What is carried and where; both axles against their limits; the least change that makes it legal. */
export default function LoadPart({ page }: PartProps) {
  const { id } = page.hire;
  const draft = useDraft<Plan>(`load.${id}`, page.load?.plan ?? emptyLoad(page));
  const save = useHireAct(
    (plan: Plan) => take(client.PUT("/api/hires/{id}/load", { params: { path: { id } }, body: plan })),
    draft.done,
  );
  if (page.vehicle === null) return <p className="card">{t("load.needsVehicle")}</p>;
  // the server sends the engine's own answer
  const result = page.load?.result as LoadResult | null | undefined;
  return (
    <>
      {result !== null && result !== undefined && (
        <LoadAnswer
          page={page}
          result={result}
          onApply={(plan) => save.mutate(plan)}
          isPending={save.isPending}
        />
      )}
      <LoadForm plan={draft.value} set={draft.set} error={save.error} />
      <FailureNote failure={save.error} />
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

interface LoadAnswerProps {
  readonly page: HirePageData;
  readonly result: LoadResult;
  readonly onApply: (plan: Plan) => void;
  readonly isPending: boolean;
}

function LoadAnswer({ page, result, onApply, isPending }: LoadAnswerProps) {
  const plan = page.load?.plan;
  return (
    <section className="card" aria-labelledby="load-title">
      <h2 id="load-title">
        {t(result.legal ? (result.needsWeighbridge ? "load.legalWeigh" : "load.legal") : "load.over")}
      </h2>
      <WeighLine name={t("load.total")} against={result.total} />
      <WeighLine name={t("load.front")} against={result.front} />
      <WeighLine name={t("load.rear")} against={result.rear} />
      {result.tyres !== null && (
        <>
          <WeighLine name={t("load.tyresFront")} against={result.tyres.front} />
          <WeighLine name={t("load.tyresRear")} against={result.tyres.rear} />
        </>
      )}
      {plan !== null && plan !== undefined && result.leastChange.outcome !== "notNeeded" && (
        <LeastChangeBox change={result.leastChange} plan={plan} onApply={onApply} isPending={isPending} />
      )}
      {page.load !== null && page.load.findings.length > 0 && <FindingsList findings={page.load.findings} />}
      <details>
        <summary className="fold">{t("load.lines", { n: result.lines.length })}</summary>
        <LoadLines result={result} />
      </details>
      <p className="quiet">{t("load.caution")}</p>
    </section>
  );
}

const lineName = (kind: string, name: string): string =>
  has(name) ? say(name) : kind === "item" || kind === "option" ? name : t(`load.kind.${kind as "item"}`);

function LoadLines({ result }: { readonly result: LoadResult }) {
  return (
    <ScrollX label={t("load.lines", { n: result.lines.length })}>
      <table className="dense amounts">
        <thead>
          <tr>
            <th>{t("load.what")}</th>
            <th>{t("load.mass")}</th>
            <th>{t("load.onFront")}</th>
            <th>{t("load.onRear")}</th>
          </tr>
        </thead>
        <tbody>
          {result.lines.map((line) => (
            <tr key={line.id}>
              <td>{lineName(line.kind, line.name)}</td>
              <td>
                <FigureTap figure={line.mass} label={lineName(line.kind, line.name)} />
              </td>
              <td>
                <FigureTap figure={line.front} label={t("load.onFront")} />
              </td>
              <td>
                <FigureTap figure={line.rear} label={t("load.onRear")} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollX>
  );
}

interface LoadFormProps {
  readonly plan: Plan;
  readonly set: (plan: Plan) => void;
  readonly error: unknown;
}

function LoadForm({ plan, set, error }: LoadFormProps) {
  const setItem = (place: number, item: Plan["items"][number] | null) =>
    set({
      ...plan,
      items: plan.items.flatMap((before, k) => (k !== place ? [before] : item === null ? [] : [item])),
    });
  return (
    <section className="card sheet" aria-labelledby="carried-title">
      <h2 id="carried-title">{t("load.carried")}</h2>
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
      {plan.items.map((item, k) => (
        <div key={item.id} className="line-box">
          <div className="sheet-fields">
            <TextField
              label={t("load.itemName")}
              value={item.name}
              onChange={(name) => setItem(k, { ...item, name })}
              error={problemAt(error, `items.${k}.name`)}
            />
            <NumberField
              label={t("load.mass")}
              unit="kg"
              min={0}
              max={1500}
              value={item.massKg}
              onChange={(n) => setItem(k, { ...item, massKg: n ?? 0 })}
              error={problemAt(error, `items.${k}.massKg`)}
            />
            <NumberField
              label={t("load.position")}
              unit="m"
              min={-1.5}
              max={9}
              step={0.1}
              value={item.behindFrontAxleM}
              onChange={(n) => setItem(k, { ...item, behindFrontAxleM: n ?? 0 })}
              error={problemAt(error, `items.${k}.behindFrontAxleM`)}
            />
            <div className="row">
              <TickField value={item.removable} onChange={(removable) => setItem(k, { ...item, removable })}>
                {t("load.removable")}
              </TickField>
              <Button look="quiet" onPress={() => setItem(k, null)}>
                {t("load.remove")}
              </Button>
            </div>
          </div>
        </div>
      ))}
      <div>
        <Button
          onPress={() =>
            set({
              ...plan,
              items: [
                ...plan.items,
                {
                  id: `item${Date.now().toString(36)}`,
                  name: "",
                  massKg: 10,
                  behindFrontAxleM: 4,
                  removable: true,
                },
              ],
            })
          }
        >
          {t("load.add")}
        </Button>
      </div>
      <p className="quiet">{t("load.seatsNote", { n: plan.seats.length })}</p>
    </section>
  );
}
