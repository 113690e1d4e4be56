import type { Finding, StoreForecast, TripForecast } from "@setfair/engine";
import { leastLeft, shownChancePct } from "@setfair/engine";
import { FigureSums, FindingText, StoreStrip } from "../../../parts/index.ts";
import { drawName } from "../../../parts/setting-words.ts";
import { hasTrouble, likelyAt, stripOf } from "../../../parts/strip-of-store.ts";
import { dateText, figureText, mendText, t } from "../../../parts/words.ts";

/** Why it comes to trouble, and what would mend it, in the words of the finding. */
function Reason({ finding }: { readonly finding: Finding }) {
  return (
    <div className="strip-reason">
      <p>
        <FindingText finding={finding} />
      </p>
      {finding.mends.length > 0 && (
        <ul>
          {finding.mends.map((mend) => (
            <li key={mendText(mend)}>{mendText(mend)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** First trouble over all lives: the early tenth, the middle and the late tenth. */
function When({ store }: { readonly store: StoreForecast }) {
  const { p10At, p50At, p90At } = store.trouble;
  const text = (at: string | null) => (at === null ? t("trip.when.never") : dateText(at, "dayTime"));
  return (
    <dl className="figure-sums">
      <dt>{t("trip.when.early")}</dt>
      <dd>{text(p10At)}</dd>
      <dt>{t("trip.when.middle")}</dt>
      <dd>{text(p50At)}</dd>
      <dt>{t("trip.when.late")}</dt>
      <dd>{text(p90At)}</dd>
    </dl>
  );
}

function Sums({ store, finding }: { readonly store: StoreForecast; readonly finding: Finding | undefined }) {
  return (
    <div className="stack">
      {finding !== undefined && <Reason finding={finding} />}
      {hasTrouble(store) && <When store={store} />}
      <div>
        <FigureSums figure={store.capacityAh ?? store.capacity} label={t("trip.capacity")} />
      </div>
      <div>
        <FigureSums figure={store.atDeparture} label={t("trip.atDeparture")} />
      </div>
      <div>
        <FigureSums figure={store.usePerDayAh ?? store.usePerDay} label={t("trip.usePerDay")} />
      </div>
      <dl className="figure-sums">
        {store.draws.map((draw) => (
          <div key={draw.system} className="visually-contents">
            <dt>{drawName(draw.kind)}</dt>
            <dd>
              {figureText(draw.amount)} · {figureText({ value: draw.share, unit: "share" })}
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

function sayOf(store: StoreForecast): string {
  if (hasTrouble(store)) {
    const when = likelyAt(store);
    return t("trip.strip.trouble", {
      end: store.troubleAt,
      battery: store.store === "battery12" ? "yes" : "no",
      when: when === null ? "none" : dateText(when, "dayTime"),
    });
  }
  const left = Math.round(leastLeft(store) * 100);
  return t("trip.strip.lasts", {
    end: store.troubleAt,
    pct: store.troubleAt === "empty" ? left : 100 - left,
  });
}

/** One store of the forecast on the road of the trip. */
export function ForecastStrip({
  store,
  forecast,
  findings,
}: {
  readonly store: StoreForecast;
  readonly forecast: TripForecast;
  /** of the forecast: that of this store says why */
  readonly findings: readonly Finding[];
}) {
  const mark = t("trip.mark", {
    end: store.troubleAt,
    battery: store.store === "battery12" ? "yes" : "no",
    pct: shownChancePct(store.trouble.chance),
  });
  const name = t(`store.${store.store}`);
  const line = sayOf(store);
  return (
    <StoreStrip
      name={name}
      size={t("trip.size", { size: figureText(store.capacityAh ?? store.capacity) })}
      {...stripOf(store, forecast, mark)}
      say={line}
      spoken={t("trip.strip.spoken", { store: name, line })}
      sums={<Sums store={store} finding={findings.find(({ about }) => about === store.store)} />}
    />
  );
}
