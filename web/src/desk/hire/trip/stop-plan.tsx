import {
  type Finding,
  type PostForecast,
  type StopCard,
  type StopForecast,
  type StopPlan,
  shownChancePct,
  type TripInput,
  tellTrip,
} from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FigureTap, Loading, RoadOfStops } from "../../../parts/index.ts";
import { keptText } from "../../../parts/post-words.ts";
import { settingText } from "../../../parts/setting-words.ts";
import { figureText, moneyText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { keepPart } from "../keep-part.ts";
import { type HirePageData, type PartProps, useHireAct } from "../use-hire.ts";
import { isAsAsked, isBetter } from "./better-plan.ts";
import { ForecastStrip } from "./forecast-strip.tsx";
import { planHere } from "./plan-here.ts";
import { roadOf } from "./road-of-trip.ts";

type Trip = NonNullable<HirePageData["trip"]>;

/** What to do at each stop, found by living the trip again and again in this browser. Stands apart from the trip as asked. */
export function StopPlanCard({ page }: PartProps) {
  const { id } = page.hire;
  const [isWanted, setWanted] = useState(false);
  const plan = useQuery({
    queryKey: ["stop-plan", id, page.forecastHash],
    queryFn: async () => {
      const question = await take(client.GET("/api/hires/{id}/trip-question", { params: { path: { id } } }));
      // the server sends what the engine asks for
      return planHere(question.input as TripInput);
    },
    enabled: isWanted,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
  if (page.trip === null || page.vehicle === null || page.trip.stops.length === 0) return null;
  return (
    <section className="card" aria-labelledby="plan-title">
      <h2 id="plan-title">
        {t("plan.title")} <span className="quiet">{t("plan.withPlan")}</span>
      </h2>
      {!isWanted && (
        <div className="row spread">
          <p className="quiet">{t("plan.what")}</p>
          <Button onPress={() => setWanted(true)}>{t("plan.search")}</Button>
        </div>
      )}
      {isWanted && plan.isPending && <Loading what={t("plan.searching")} />}
      <FailureNote failure={plan.error} onAgain={() => void plan.refetch()} />
      {plan.data !== undefined && <Plan page={page} plan={plan.data.result} findings={plan.data.findings} />}
    </section>
  );
}

function Plan({
  page,
  plan,
  findings,
}: PartProps & { readonly plan: StopPlan; readonly findings: readonly Finding[] }) {
  const { id } = page.hire;
  const takeIt = useHireAct(() =>
    keepPart(id, () =>
      take(
        client.PUT("/api/hires/{id}/trip", {
          params: { path: { id }, query: { basedOn: String(page.versions.trip) } },
          body: plan.trip as Trip,
        }),
      ),
    ),
  );
  return (
    <>
      <p className="last-sentence">{sentenceOf(plan, page.trip)}</p>
      {plan.otherPitches.length > 0 && (
        <div className="line-box">
          <strong>{t("plan.otherPitches")}</strong>
          <ul>
            {plan.otherPitches.map(({ stop, name, needs }) => (
              <li key={stop}>
                {t("plan.otherPitch", { name, needs: needs.map((need) => t(`need.${need}`)).join(", ") })}
              </li>
            ))}
          </ul>
        </div>
      )}
      <ol className="plan-cards">
        <li className="plan-card">
          <strong>{t("plan.depot")}</strong>
          <p>{departText(plan)}</p>
        </li>
        {plan.cards.map((card) => (
          <Card
            key={card.stop}
            card={card}
            stop={plan.forecast.stops[card.stop]}
            post={plan.forecast.posts?.find(({ stop }) => stop === card.stop)}
          />
        ))}
      </ol>
      <Chances plan={plan} />
      <details>
        <summary>{t("plan.strips")}</summary>
        <div className="strips">
          <RoadOfStops stops={roadOf(plan.trip, plan.forecast)} />
          {tellTrip(plan.forecast).shown.map((store) => (
            <ForecastStrip key={store.store} store={store} forecast={plan.forecast} findings={findings} />
          ))}
        </div>
      </details>
      <Objective plan={plan} />
      <p className="quiet last-foot">
        {t("plan.foot", {
          lives: plan.search.lives,
          tried: plan.search.evaluations,
          proven: plan.search.proven ? "yes" : "no",
          within: Math.round(plan.search.within * 100),
        })}
      </p>
      <FailureNote failure={takeIt.error} />
      {isBetter(plan, page.trip) && (
        <div className="sheet-foot">
          <Button look="main" onPress={() => takeIt.mutate()} isPending={takeIt.isPending}>
            {t(takeIt.isPending ? "desk.sending" : "plan.take")}
          </Button>
        </div>
      )}
    </>
  );
}

const effortOf = ({ inputs }: StopPlan["objective"]["asAsked"]): number => Number(inputs.effort);
const money = (pence: number): string => moneyText({ currency: "GBP", pence: Math.round(pence) });

/** What the plan is the least of, as asked and with it. */
function Objective({ plan }: { readonly plan: StopPlan }) {
  const { asAsked, withPlan } = plan.objective;
  return (
    <p className="quiet last-foot">
      {t("plan.objective", {
        asAsked: figureText(asAsked),
        withPlan: figureText(withPlan),
        effortAsked: money(effortOf(asAsked)),
        effortPlan: money(effortOf(withPlan)),
      })}{" "}
      <FigureTap figure={withPlan} label={t("plan.withPlanCost")}>
        {t("plan.objectiveOf")}
      </FigureTap>
    </p>
  );
}

/** Other pitches are proposed only where no plan serves on these; what still lasts more often than not is no such case. */
const isHopeless = ({ otherPitches, lastsShownPct }: StopPlan): boolean =>
  otherPitches.length > 0 && lastsShownPct.withPlan < 50;

function sentenceOf(plan: StopPlan, asked: Trip | null): string {
  const { asAsked, withPlan } = plan.lastsShownPct;
  const spared = effortOf(plan.objective.asAsked) - effortOf(plan.objective.withPlan);
  const kind = isHopeless(plan)
    ? "hopeless"
    : !isBetter(plan, asked)
      ? "none"
      : isAsAsked(plan, asked)
        ? "same"
        : withPlan <= asAsked && spared > 0
          ? "spares"
          : "better";
  return t("plan.sentence", { kind, asAsked, withPlan, spared: money(spared) });
}

/** What to leave the depot with, store by store, whatever this vehicle has. */
function departText({ forecast, departWith, departWithWater }: StopPlan): string {
  const items = forecast.stores.flatMap(({ store, atDeparture, capacity }) => {
    const share = (departWith as Readonly<Record<string, number | undefined>>)[store];
    const level = share ?? atDeparture.value / Math.max(capacity.value, 1e-9);
    const text = t("plan.depart", {
      store,
      full: level >= 0.995 ? "yes" : level <= 0.005 ? "no" : "part",
      pct: Math.round(level * 100),
      litres: figureText(departWithWater ?? atDeparture),
    });
    return text === "" ? [] : [text];
  });
  return items.join(", ").replace(/^./, (first) => first.toUpperCase());
}

/** What does not fit at full beside the rest: the only news of a post. */
const isTurnedDown = ({ stage, full }: PostForecast["kept"][number]) => stage.value < full.value;

function Card({
  card,
  stop,
  post,
}: {
  readonly card: StopCard;
  readonly stop: StopForecast | undefined;
  readonly post: PostForecast | undefined;
}) {
  const set = stop?.set ?? [];
  const down = post?.kept.filter(
    (load) => isTurnedDown(load) && !set.some(({ system }) => system === load.system),
  );
  const acts = card.acts.map((act) =>
    t(card.added.includes(act) ? "plan.added" : "plan.act", { act: t(`act.${act}`) }),
  );
  return (
    <li className="plan-card">
      <strong>{t("trip.stop", { n: card.stop + 1, name: card.name })}</strong>
      <p>{acts.length === 0 ? t("plan.nothing") : acts.join(" · ")}</p>
      {card.dropped.length > 0 && (
        <p className="quiet">
          {t("plan.dropped", { acts: card.dropped.map((act) => t(`act.${act}`)).join(", ") })}
        </p>
      )}
      {set.map((one) => (
        <p key={one.system}>{settingText(one)}</p>
      ))}
      {down !== undefined && down.length > 0 && (
        <p>{t("plan.onPost", { things: down.map(keptText).join(" · ") })}</p>
      )}
      {card.leaveWithWater !== null && (
        <p className="quiet">
          {t("plan.leaveWith", {
            water: figureText(card.leaveWithWater),
            fills: card.acts.includes("fillWater") ? "yes" : "no",
          })}
        </p>
      )}
    </li>
  );
}

/** Only what is news either way. */
function Chances({ plan }: { readonly plan: StopPlan }) {
  const news = plan.chances.filter(({ asAsked, withPlan }) => Math.max(asAsked, withPlan) >= 0.05);
  if (news.length === 0) return null;
  return (
    <ul>
      {news.map(({ store, asAsked, withPlan }) => (
        <li key={store}>
          {t("plan.chance", {
            store: t(`store.${store}`),
            asAsked: shownChancePct(asAsked),
            withPlan: shownChancePct(withPlan),
          })}
        </li>
      ))}
    </ul>
  );
}
