import type { ReactNode } from "react";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";
import { classes } from "./classes.ts";
import { StripDrawing, type StripShape } from "./strip-drawing.tsx";

export interface StoreStripProps extends StripShape {
  readonly name: string;
  /** e.g. "47 Ah usable" */
  readonly size: string;
  /** one line beside the strip */
  readonly say: string;
  /** read aloud in place of the drawing */
  readonly spoken: string;
  /** shown when the strip is opened: its sums and sources */
  readonly sums: ReactNode;
}

/** One store on the road of the trip: middle line, band for eight in ten, empty and full lines, trouble marked. */
export function StoreStrip(props: StoreStripProps) {
  const { trouble } = props;
  return (
    <div className="strip-row">
      <span className="strip-name">
        {props.name}
        <small>{props.size}</small>
      </span>
      <DialogTrigger>
        <Button className="strip-plot" aria-label={props.spoken}>
          <StripDrawing {...props} />
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
