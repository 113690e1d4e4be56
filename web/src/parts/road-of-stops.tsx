import type { CSSProperties } from "react";
import { classes } from "./classes.ts";

export interface RoadStop {
  readonly key: string;
  readonly name: string;
  /** place on the road, 0 to 1 */
  readonly share: number;
  /** what is done there, in words; none where nothing is */
  readonly acts: string | null;
  /** a short figure beside the name, and what it is, for who does not see the road */
  readonly chance?: { readonly text: string; readonly spoken: string; readonly isLow: boolean };
}

/** Letters that fit on the road at the width of a laptop; only used to keep words apart. */
const LETTERS = 92;
const ROWS = 3;

/** Gives each text the first row in which it meets no other; the last row where all are taken. */
export function rowsOf(
  texts: readonly { readonly share: number; readonly length: number }[],
): readonly number[] {
  const ends = Array.from({ length: ROWS }, () => Number.NEGATIVE_INFINITY);
  return texts.map(({ share, length }) => {
    const half = length / 2 / LETTERS;
    const middle = Math.min(1 - half, Math.max(half, share));
    const free = ends.findIndex((end) => end <= middle - half);
    const row = free < 0 ? ROWS - 1 : free;
    ends[row] = middle + half + 0.01;
    return row;
  });
}

const lettersOf = ({ name, chance }: RoadStop): number => name.length + 1 + (chance?.text.length ?? -1) + 1;

const sideOf = (share: number, length: number): string | false => {
  const half = length / 2 / LETTERS;
  if (share < half) return "road-start";
  return share > 1 - half ? "road-end" : false;
};

/** The road of a trip, from depot to depot, with what is done at each stop. Same scale as the strips below it. */
export function RoadOfStops({ stops }: { readonly stops: readonly RoadStop[] }) {
  const nameRows = rowsOf(stops.map((stop) => ({ share: stop.share, length: lettersOf(stop) })));
  const acting = stops.filter((stop) => stop.acts !== null);
  const actRows = rowsOf(acting.map(({ share, acts }) => ({ share, length: (acts ?? "").length + 3 })));
  const names = Math.max(0, ...nameRows);
  const acts = acting.length === 0 ? 0 : Math.max(0, ...actRows) + 1;
  return (
    <div className="strip-row strip-row-road">
      <span />
      <ol className={classes("road-plot", `road-names-${names}`, `road-acts-${acts}`)}>
        <li className="road-line" aria-hidden="true" />
        {stops.map((stop, k) => (
          <li
            key={stop.key}
            className="road-stop"
            style={{ "--at": `${stop.share * 100}%` } as CSSProperties}
          >
            <span className="road-stop-ring" aria-hidden="true" />
            <span
              className={classes(
                "road-stop-name",
                `road-up-${nameRows[k]}`,
                sideOf(stop.share, lettersOf(stop)),
              )}
            >
              {stop.name}
              {stop.chance !== undefined && (
                <span className={classes("road-stop-chance", stop.chance.isLow && "road-stop-low")}>
                  {" "}
                  {stop.chance.text}
                  <span className="visually-hidden"> {stop.chance.spoken}</span>
                </span>
              )}
            </span>
            {stop.acts !== null && (
              <span
                className={classes(
                  "road-stop-acts",
                  `road-down-${actRows[acting.indexOf(stop)]}`,
                  sideOf(stop.share, stop.acts.length + 3),
                )}
              >
                {stop.acts}
              </span>
            )}
          </li>
        ))}
      </ol>
      <span />
    </div>
  );
}
