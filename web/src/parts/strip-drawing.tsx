export interface StripShape {
  /** share of the capacity, 0 to 1, at each point of the axis */
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
  /** hours of the points; the last is the end of the road */
  readonly hours: readonly number[];
  readonly tone: "ink" | "brass" | "water" | "moss";
  /** the moment of trouble on the road, 0 to 1, with its words */
  readonly trouble: { readonly share: number; readonly text: string } | null;
}

const WIDTH = 1000;
const TOP = 6;
const BOTTOM = 60;

const place = (hours: readonly number[], k: number): number => {
  const end = hours[hours.length - 1] ?? 1;
  return end === 0 ? 0 : ((hours[k] ?? 0) / end) * WIDTH;
};
const height = (share: number): number => BOTTOM - Math.min(1, Math.max(0, share)) * (BOTTOM - TOP);

function pathOf(hours: readonly number[], shares: readonly number[]): string {
  return shares
    .map((share, k) => `${k === 0 ? "M" : "L"}${place(hours, k).toFixed(1)} ${height(share).toFixed(1)}`)
    .join("");
}

function bandOf(hours: readonly number[], low: readonly number[], high: readonly number[]): string {
  const back = low
    .map((share, k) => `L${place(hours, k).toFixed(1)} ${height(share).toFixed(1)}`)
    .reverse()
    .join("");
  return `${pathOf(hours, high)}${back}Z`;
}

/** Middle line, band for eight in ten, empty and full lines, trouble marked: what it shows is said in words beside it. */
export function StripDrawing({ hours, p10, p50, p90, tone, trouble }: StripShape) {
  return (
    <svg viewBox={`0 0 ${WIDTH} 66`} preserveAspectRatio="none" aria-hidden="true">
      <path
        d={`M0 ${TOP}H${WIDTH}M0 ${BOTTOM}H${WIDTH}`}
        stroke="var(--edge)"
        vectorEffect="non-scaling-stroke"
      />
      <path d={bandOf(hours, p10, p90)} fill={`var(--${tone})`} opacity="0.22" />
      <path
        d={pathOf(hours, p50)}
        fill="none"
        stroke={`var(--${tone})`}
        strokeWidth="2.500"
        strokeLinejoin="round"
        vectorEffect="non-scaling-stroke"
      />
      {trouble !== null && (
        <path
          d={`M${trouble.share * WIDTH} ${TOP}V${BOTTOM}`}
          stroke="var(--red)"
          strokeWidth="2"
          strokeDasharray="4 3"
          vectorEffect="non-scaling-stroke"
        />
      )}
    </svg>
  );
}
