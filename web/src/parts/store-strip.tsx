import type { ReactNode } from "react";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";
import { classes } from "./classes.ts";

export interface StoreStripProps {
  readonly name: string;
  /** e.g. "47 Ah usable" */
  readonly size: string;
  /** share of the capacity, 0 to 1, at each point of the axis */
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
  /** hours of the points; the last is the end of the road */
  readonly hours: readonly number[];
  readonly tone: "ink" | "brass" | "water" | "moss";
  /** the moment of trouble on the road, 0 to 1, with its words */
  readonly trouble: { readonly share: number; readonly text: string } | null;
  /** one line beside the strip */
  readonly say: string;
  /** read aloud in place of the drawing */
  readonly spoken: string;
  /** shown when the strip is opened: its sums and sources */
  readonly sums: ReactNode;
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

/** One store on the road of the trip: middle line, band for eight in ten, empty and full lines, trouble marked. */
export function StoreStrip(props: StoreStripProps) {
  const { hours, trouble } = props;
  return (
    <div className="strip-row">
      <span className="strip-name">
        {props.name}
        <small>{props.size}</small>
      </span>
      <DialogTrigger>
        <Button className="strip-plot" aria-label={props.spoken}>
          <svg viewBox={`0 0 ${WIDTH} 66`} preserveAspectRatio="none" aria-hidden="true">
            <path
              d={`M0 ${TOP}H${WIDTH}M0 ${BOTTOM}H${WIDTH}`}
              stroke="var(--edge)"
              vectorEffect="non-scaling-stroke"
            />
            <path d={bandOf(hours, props.p10, props.p90)} fill={`var(--${props.tone})`} opacity="0.22" />
            <path
              d={pathOf(hours, props.p50)}
              fill="none"
              stroke={`var(--${props.tone})`}
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
          {trouble !== null && (
            <span
              className="strip-trouble-text"
              style={
                trouble.share > 0.6
                  ? { right: `${101 - trouble.share * 100}%` }
                  : { left: `${trouble.share * 100 + 1}%` }
              }
            >
              {trouble.text}
            </span>
          )}
        </Button>
        <Popover className="popover">
          <Dialog className="popover-body" aria-label={props.name}>
            {props.sums}
          </Dialog>
        </Popover>
      </DialogTrigger>
      <span className={classes("strip-say", trouble !== null && "strip-say-trouble")}>{props.say}</span>
    </div>
  );
}
