import type { Finding, StoreForecast, StoreId, TripForecast } from "@setfair/engine";
import { leastLeft } from "@setfair/engine";
import { FigureSums, FindingText, StoreStrip } from "../../../parts/index.ts";
import { dateText, figureText, has, mendText, say, t } from "../../../parts/words.ts";

const TONES: Readonly<Partial<Record<StoreId, "ink" | "brass" | "water" | "moss">>> = {
  battery12: "ink",
  starterBattery: "ink",
  tractionBattery: "ink",
  lpg: "brass",
  fuel: "brass",
  freshWater: "water",
  def: "water",
  wasteWater: "moss",
  cassette: "moss",
};

/** Below this a trouble is noise of the drawing of lots, not news (1 in 20). */
const NEWS = 0.05;
const hasTrouble = (store: StoreForecast): boolean => store.trouble.chance >= NEWS;

/** A chance is shown in steps of 5: finer would pretend. */
export const shownPct = (chance: number): number => Math.round(chance * 20) * 5;

const minutesOf = (local: string): number => Date.parse(`${local}:00Z`) / 60_000;

function troubleOf(store: StoreForecast, forecast: TripForecast): { share: number; text: string } | null {
  const at = store.trouble.p50At ?? store.trouble.p10At;
  const first = forecast.axis.at[0];
  const last = forecast.axis.at.at(-1);
  if (!hasTrouble(store) || at === null || first === undefined || last === undefined) return null;
  const share = (minutesOf(at) - minutesOf(first)) / Math.max(1, minutesOf(last) - minutesOf(first));
  return {
    share: Math.min(1, Math.max(0, share)),
    text: t("trip.mark", {
      end: store.troubleAt,
      battery: store.store === "battery12" ? "yes" : "no",
      pct: shownPct(store.trouble.chance),
    }),
  };
}

const kindName = (kind: string): string =>
  has(`thing.${kind}`) ? say(`thing.${kind}`) : has(`kind.${kind}`) ? say(`kind.${kind}`) : kind;

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

function Sums({ store, finding }: { readonly store: StoreForecast; readonly finding: Finding | undefined }) {
  return (
    <div className="stack">
      {finding !== undefined && <Reason finding={finding} />}
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
            <dt>{kindName(draw.kind)}</dt>
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
    const when = store.trouble.p50At ?? store.trouble.p10At;
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
  const capacity = Math.max(1e-9, store.capacity.value);
  const shares = (levels: readonly number[]) => levels.map((level) => level / capacity);
  const name = t(`store.${store.store}`);
  const line = sayOf(store);
  return (
    <StoreStrip
      name={name}
      size={t("trip.size", { size: figureText(store.capacityAh ?? store.capacity) })}
      p10={shares(store.band.p10)}
      p50={shares(store.band.p50)}
      p90={shares(store.band.p90)}
      hours={forecast.axis.hours}
      tone={TONES[store.store] ?? "ink"}
      trouble={troubleOf(store, forecast)}
      say={line}
      spoken={t("trip.strip.spoken", { store: name, line })}
      sums={<Sums store={store} finding={findings.find(({ about }) => about === store.store)} />}
    />
  );
}
