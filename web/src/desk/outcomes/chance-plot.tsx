import type { Schemas } from "../../api/client.ts";
import { t } from "../../parts/words.ts";

type Judged = Schemas["ForecastOutcomes"]["stores"][number];
const SIZE = 300;
const EDGE = 34;
const RIGHT = 16;
const at = (share: number) => EDGE + share * (SIZE - EDGE - RIGHT);
const up = (share: number) => SIZE - EDGE - share * (SIZE - EDGE - RIGHT);

function pathOf(shares: readonly number[], observed: readonly number[]): string {
  return observed
    .map((came, k) => `${k === 0 ? "M" : "L"}${at(shares[k] ?? 0).toFixed(1)} ${up(came).toFixed(1)}`)
    .join("");
}

/** What the forecast said against how often it came true; on the slanting line both agree. */
export function ChancePlot({
  judged,
  shares,
}: {
  readonly judged: Judged;
  readonly shares: readonly number[];
}) {
  const { store, before, after } = judged;
  const name = t(`store.${store}`);
  const of = (share: number) =>
    Math.round(100 * (after.observed[shares.findIndex((each) => each > share - 1e-9)] ?? 0));
  return (
    <figure className="outcomes-figure">
      <figcaption>{t("outcomes.plot", { store: name })}</figcaption>
      <svg
        viewBox={`0 0 ${SIZE} ${SIZE}`}
        role="img"
        aria-label={t("outcomes.plotSpoken", {
          store: name,
          n: after.count,
          low: of(0.1),
          middle: of(0.5),
          high: of(0.9),
        })}
      >
        {[0, 0.5, 1].map((share) => (
          <g key={share} className="outcomes-axis">
            <path d={`M${at(share)} ${up(0)}V${up(1)}M${at(0)} ${up(share)}H${at(1)}`} />
            <text x={at(share)} y={SIZE - 16} textAnchor="middle">
              {share * 100}
            </text>
            <text x={EDGE - 6} y={up(share) + 4} textAnchor="end">
              {share * 100}
            </text>
          </g>
        ))}
        <path className="outcomes-agree" d={`M${at(0)} ${up(0)}L${at(1)} ${up(1)}`} />
        <path className="outcomes-line-before" d={pathOf(shares, before.observed)} />
        <path className="outcomes-line-after" d={pathOf(shares, after.observed)} />
        <text className="outcomes-word" x={at(1)} y={SIZE - 3} textAnchor="end">
          {t("outcomes.plotSaid")} →
        </text>
        <text className="outcomes-word" x={EDGE + 4} y={up(1) + 12}>
          ↑ {t("outcomes.plotCame")}
        </text>
      </svg>
      <p className="quiet outcomes-key">
        <span className="outcomes-key-after" aria-hidden="true" /> {t("outcomes.after")}{" "}
        <span className="outcomes-key-before" aria-hidden="true" /> {t("outcomes.before")}
      </p>
    </figure>
  );
}
