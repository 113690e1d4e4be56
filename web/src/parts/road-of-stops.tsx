import { classes } from "./classes.ts";

export interface RoadStop {
  readonly key: string;
  readonly name: string;
  /** place on the road, 0 to 1 */
  readonly share: number;
  /** what is done there, in words; none where nothing is */
  readonly acts: string | null;
}

/** The road of a trip, from depot to depot, with what is done at each stop. Same scale as the strips below it. */
export function RoadOfStops({ stops }: { readonly stops: readonly RoadStop[] }) {
  return (
    <div className="strip-row">
      <span />
      <ol className={classes("road-plot", stops.some((stop) => stop.acts !== null) && "road-plot-tall")}>
        <li className="road-line" aria-hidden="true" />
        {stops.map((stop, k) => (
          <li
            key={stop.key}
            className={classes(
              "road-stop",
              k === 0 && "road-stop-first",
              k === stops.length - 1 && "road-stop-last",
            )}
            style={{ left: `${stop.share * 100}%` }}
          >
            <span className="road-stop-name">{stop.name}</span>
            <span className="road-stop-ring" aria-hidden="true" />
            {stop.acts !== null && <span className="road-stop-acts">{stop.acts}</span>}
          </li>
        ))}
      </ol>
      <span />
    </div>
  );
}
