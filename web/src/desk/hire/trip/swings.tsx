import type { Figure, StoreForecast, StoreId, SwingBar, Tornado, TripInput } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Loading, SelectField } from "../../../parts/index.ts";
import { figureText, has, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import type { PartProps } from "../use-hire.ts";
import { tornadoHere } from "./plan-here.ts";
import { SwingChart, type SwingRow } from "./swing-chart.tsx";

/** Which five things nobody knows beforehand move the answer for one store most: worked out in this browser. */
export function Swings({
  page,
  stores,
}: PartProps & {
  /** those that are worth asking about, the worst first */
  readonly stores: readonly StoreForecast[];
}) {
  const { id } = page.hire;
  const [chosen, choose] = useState<StoreId | null>(null);
  const first = stores[0]?.store ?? null;
  const store = stores.some((one) => one.store === chosen) ? chosen : first;
  const found = useQuery({
    queryKey: ["swings", id, page.forecastHash, store],
    queryFn: async () => {
      const question = await take(client.GET("/api/hires/{id}/trip-question", { params: { path: { id } } }));
      // the server sends what the engine asks for
      return tornadoHere(question.input as TripInput, store);
    },
    enabled: store !== null,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
  if (store === null) return null;
  return (
    <section className="card" aria-labelledby="why-title">
      <div className="row spread">
        <h2 id="why-title">{t("why.title")}</h2>
        <SelectField<StoreId>
          label={t("why.store")}
          value={store}
          onChange={choose}
          options={stores.map((one) => ({ value: one.store, label: t(`store.${one.store}`) }))}
        />
      </div>
      {found.isPending && <Loading what={t("why.working")} />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined && found.data !== null && <Chart tornado={found.data} />}
    </section>
  );
}

/** of the widest swing, left free at either end of the scale */
const MARGIN = 0.15;

function Chart({ tornado }: { readonly tornado: Tornado }) {
  const { base, bars, by, runs } = tornado;
  if (bars.length === 0) return <p className="quiet">{t("why.none")}</p>;
  const values = [base.value, ...bars.flatMap(({ low, high }) => [low.value, high.value])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max((most - least) * MARGIN, 1e-9);
  const from = Math.max(0, least - margin);
  const to = by === "when" ? most + margin : Math.min(100, most + margin);
  const shareOf = ({ value }: Figure) => (value - from) / (to - from);
  return (
    <>
      <p className="swing-answer">
        {t("why.answer", { by })}: <strong>{answerText(base)}</strong>
      </p>
      <SwingChart
        base={{ share: shareOf(base), text: t("why.base") }}
        ends={[answerText({ ...base, value: from }), answerText({ ...base, value: to })]}
        rows={bars.map((bar) => rowOf(bar, by, shareOf))}
      />
      <p className="quiet last-foot">{t("why.what", { runs })}</p>
    </>
  );
}

const answerText = ({ value, unit }: Figure): string =>
  figureText({ value: unit === "%" ? Math.round(value) : Math.round(value * 10) / 10, unit });

function rowOf(bar: SwingBar, by: Tornado["by"], shareOf: (figure: Figure) => number): SwingRow {
  const { input, kind, low, high, inputLow, inputHigh } = bar;
  const id = `why.input.${input}`;
  const name = has(id) ? say(id) : input;
  const [atLow, atHigh] = [answerText(low), answerText(high)];
  return {
    key: `${kind}.${input}`,
    name,
    low: { share: shareOf(low), text: t("why.less", { answer: atLow }) },
    high: { share: shareOf(high), text: t("why.more", { answer: atHigh }) },
    note:
      inputLow === null || inputHigh === null
        ? null
        : t("why.range", { low: figureText(inputLow), high: figureText(inputHigh) }),
    spoken: t("why.spoken", { name, answer: by, low: atLow, high: atHigh }),
  };
}
