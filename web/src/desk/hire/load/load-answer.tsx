import type { LoadResult, VehicleDescription } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import { FigureTap, FindingsList } from "../../../parts/index.ts";
import { figureText, t } from "../../../parts/words.ts";
import { LeastChangeBox } from "./least-change-box.tsx";
import { LoadLines } from "./load-lines.tsx";
import { LoadPictureView } from "./load-picture.tsx";
import type { LoadAnswerNow } from "./use-load-answer.ts";
import { WeighLine } from "./weigh-line.tsx";

type Plan = Schemas["LoadPlan"];

export interface LoadAnswerProps {
  readonly answer: NonNullable<LoadAnswerNow>;
  readonly vehicle: VehicleDescription;
  readonly plan: Plan;
  readonly chosen: string | null;
  readonly onPlan: (plan: Plan) => void;
  readonly onApply: (plan: Plan) => void;
  readonly isPending: boolean;
}

/** The load as it stands on the page: drawn, against every limit, with the least change that makes it legal. */
export function LoadAnswer({ answer, vehicle, plan, chosen, onPlan, onApply, isPending }: LoadAnswerProps) {
  const { result, findings } = answer;
  const thing = plan.items.find(({ id }) => id === chosen);
  return (
    <section className="card" aria-labelledby="load-title">
      <h2 id="load-title">
        {t(result.legal ? (result.needsWeighbridge ? "load.legalWeigh" : "load.legal") : "load.over")}
      </h2>
      <LoadPictureView
        vehicle={vehicle}
        plan={plan}
        result={result}
        chosen={thing}
        onPlace={(place, behindFrontAxleM) =>
          onPlan({
            ...plan,
            items: plan.items.map((item) =>
              item.id === chosen ? { ...item, place, behindFrontAxleM } : item,
            ),
          })
        }
      />
      <WeighLines result={result} />
      {result.leastChange.outcome !== "notNeeded" && (
        <LeastChangeBox change={result.leastChange} plan={plan} onApply={onApply} isPending={isPending} />
      )}
      {result.counterOffer !== null && <p className="problem">{offerText(result.counterOffer)}</p>}
      {findings.length > 0 && <FindingsList findings={findings} />}
      <LoadConditions plan={plan} result={result} />
      <details>
        <summary className="fold">{t("load.lines", { n: result.lines.length })}</summary>
        <LoadLines result={result} />
      </details>
      <p className="quiet">{t("load.caution")}</p>
    </section>
  );
}

const offerText = ({ payloadNeeded, vehiclesLikeThis }: NonNullable<LoadResult["counterOffer"]>): string =>
  t("load.offer", { payload: figureText(payloadNeeded), n: vehiclesLikeThis.value });

function WeighLines({ result }: { readonly result: LoadResult }) {
  const { mam, technicalMax, unladen } = result.plated;
  return (
    <>
      <WeighLine name={t("load.total")} against={result.total} />
      <WeighLine name={t("load.front")} against={result.front} />
      <WeighLine name={t("load.rear")} against={result.rear} />
      {result.tyres !== null && (
        <>
          <WeighLine name={t("load.tyresFront")} against={result.tyres.front} />
          <WeighLine name={t("load.tyresRear")} against={result.tyres.rear} />
        </>
      )}
      <p className="quiet">
        {t("load.plate")} <FigureTap figure={mam} label={t("load.plate")} /> · {t("load.technical")}{" "}
        <FigureTap figure={technicalMax} label={t("load.technical")} />
        {unladen !== null && (
          <>
            {" "}
            · {t("load.unladen")} <FigureTap figure={unladen} label={t("load.unladen")} />
          </>
        )}{" "}
        · {t("load.onSteered")} <FigureTap figure={result.frontShare} label={t("load.onSteered")} />
      </p>
    </>
  );
}

/** What is printed and signed with a load that goes: it holds for this load only. */
function LoadConditions({ plan, result }: { readonly plan: Plan; readonly result: LoadResult }) {
  if (!result.legal) return null;
  const kg = (value: number) => figureText({ value, unit: "kg" });
  const carried = plan.items.reduce((sum, { massKg }) => sum + massKg, 0);
  return (
    <div className="conditions load-conditions">
      <h3>{t("load.conditions")}</h3>
      <ul>
        <li>{t("load.condition.water", { litres: plan.waterLitres })}</li>
        <li>{t("load.condition.cylinders", { n: plan.lpgCylinders })}</li>
        <li>{t("load.condition.things", { n: plan.items.length, kg: kg(carried) })}</li>
        {result.needsWeighbridge && <li>{t("load.condition.weigh")}</li>}
      </ul>
    </div>
  );
}
