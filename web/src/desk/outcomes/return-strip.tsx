import type { Schemas } from "../../api/client.ts";
import { ScrollX } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

type Judged = Schemas["ForecastOutcomes"]["stores"][number];
const HEIGHT = 208;
const MIDDLE = 104;
/** as far up and down as this many times the middle of a forecast is drawn, on a scale of ratios */
const MOST_TIMES = 3;
/** px; columns come closer together while all of them fit into about so many */
const WIDE = 860;
const COLUMN = { least: 3, most: 10 } as const;

/** Up by the logarithm, so that twice and half are equally far; what lies beyond is drawn at the edge. */
function up(times: number): number {
  const log = Math.log(Math.min(MOST_TIMES, Math.max(1 / MOST_TIMES, times))) / Math.log(MOST_TIMES);
  return MIDDLE - log * (MIDDLE - 14);
}

/** One column for each return, oldest left: the band of its forecast and what was measured. */
export function ReturnStrip({ judged }: { readonly judged: Judged }) {
  const { store, points } = judged;
  const name = t(`store.${store}`);
  const isInside = ({ p10, p90, used }: (typeof points)[number]) => used >= p10 && used <= p90;
  const column = Math.min(COLUMN.most, Math.max(COLUMN.least, WIDE / points.length));
  const mark = Math.min(3, 0.6 * column);
  const width = Math.max(160, points.length * column);
  return (
    <figure className="outcomes-figure outcomes-wide">
      <figcaption>{t("outcomes.picture", { store: name })}</figcaption>
      <ScrollX label={t("outcomes.picture", { store: name })}>
        <svg
          viewBox={`0 0 ${width + 40} ${HEIGHT}`}
          style={{ width: `${width + 40}px` }}
          role="img"
          aria-label={t("outcomes.pictureSpoken", {
            store: name,
            n: points.length,
            inside: points.filter(isInside).length,
          })}
        >
          {[2, 1, 0.5].map((times) => (
            <g key={times} className="outcomes-axis">
              <path d={`M36 ${up(times)}H${width + 40}`} />
              <text x={30} y={up(times) + 4} textAnchor="end">
                × {times}
              </text>
            </g>
          ))}
          {points.map((point, k) => {
            const x = 42 + k * column;
            const inside = isInside(point);
            return (
              // the same return stands at the same place
              // biome-ignore lint/suspicious/noArrayIndexKey: points are in order of return and never move
              <g key={k}>
                <path
                  className="outcomes-band"
                  strokeWidth={0.6 * column}
                  d={`M${x} ${up(point.p10)}V${up(point.p90)}`}
                />
                {inside ? (
                  <circle className="outcomes-in" cx={x} cy={up(point.used)} r={mark} />
                ) : (
                  <path
                    className="outcomes-out"
                    d={`M${x - mark} ${up(point.used) - mark}l${2 * mark} ${2 * mark}m0 ${-2 * mark}l${-2 * mark} ${2 * mark}`}
                  />
                )}
              </g>
            );
          })}
        </svg>
      </ScrollX>
    </figure>
  );
}
