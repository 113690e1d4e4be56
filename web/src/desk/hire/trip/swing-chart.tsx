import { classes } from "../../../parts/index.ts";

export interface SwingRow {
  readonly key: string;
  readonly name: string;
  /** the answer with little and with much of it: place on the scale, 0 to 1, and in words */
  readonly low: { readonly share: number; readonly text: string };
  readonly high: { readonly share: number; readonly text: string };
  /** the input itself where it has a unit */
  readonly note: string | null;
  /** read aloud in place of the bar */
  readonly spoken: string;
}

const percent = (share: number): string => `${(100 * Math.min(1, Math.max(0, share))).toFixed(2)}%`;

/** Bars either side of the answer as it is: what each input moves it by when it is low and when it is high. */
export function SwingChart({
  rows,
  base,
  ends,
}: {
  readonly rows: readonly SwingRow[];
  readonly base: { readonly share: number; readonly text: string };
  /** what the scale begins and ends with, in words */
  readonly ends: readonly [from: string, to: string];
}) {
  return (
    <ol className="swings">
      <li className="swing-row swing-head" aria-hidden="true">
        <span />
        <span className="swing-scale">
          <span className="swing-end">{ends[0]}</span>
          <span className="swing-base-text" style={{ left: percent(base.share) }}>
            {base.text}
          </span>
          <span className="swing-end swing-end-to">{ends[1]}</span>
        </span>
      </li>
      {rows.map(({ key, name, low, high, note, spoken }) => (
        <li key={key} className="swing-row">
          <span className="swing-name">
            {name}
            {note !== null && <small>{note}</small>}
          </span>
          <span className="swing-scale" role="img" aria-label={spoken}>
            {[
              { end: low, look: "swing-low" },
              { end: high, look: "swing-high" },
            ].map(({ end, look }) => (
              <span
                key={look}
                className={classes("swing-bar", look)}
                style={{
                  left: percent(Math.min(end.share, base.share)),
                  width: percent(Math.abs(end.share - base.share)),
                }}
              />
            ))}
            <span className="swing-base" style={{ left: percent(base.share) }} />
          </span>
          <span className="swing-ends" aria-hidden="true">
            <span className="swing-key swing-low">{low.text}</span>
            <span className="swing-key swing-high">{high.text}</span>
          </span>
        </li>
      ))}
    </ol>
  );
}
