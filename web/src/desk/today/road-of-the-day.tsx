import { useEffect, useRef } from "react";
import type { Schemas } from "../../api/client.ts";
import { classes } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";

type Today = Schemas["Today"];
type Hire = Schemas["HireSummary"];

const hourOf = (local: string): number => Number(local.slice(11, 13)) + Number(local.slice(14, 16)) / 60;

const hoursBetween = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from }, (_, k) => from + k);

interface Flag {
  readonly hire: Hire;
  readonly hour: number;
  /** row of its name, 0 nearest the road; null where no row has room: the mark stays, the name is in the list */
  readonly level: number | null;
}

const WIDTH_PX = 1300;
const LETTER_PX = 8;
/** a longer name is cut; the list below has it whole */
const LETTERS = 18;
const LEVELS = 3;

/** Gives each name the nearest row in which it meets no other. */
function placeNames(
  hires: readonly Hire[],
  time: (hire: Hire) => string,
  from: number,
  to: number,
): readonly Flag[] {
  const ends: number[] = Array.from({ length: LEVELS }, () => Number.NEGATIVE_INFINITY);
  return [...hires]
    .sort((a, b) => time(a).localeCompare(time(b)))
    .map((hire) => {
      const hour = hourOf(time(hire));
      const middle = ((hour - from) / (to - from)) * WIDTH_PX;
      const half = (Math.min(hire.customer.length, LETTERS) * LETTER_PX) / 2 + 4;
      const level = ends.findIndex((end) => end <= middle - half);
      if (level < 0) return { hire, hour, level: null };
      ends[level] = middle + half;
      return { hire, hour, level };
    });
}

function Flags({
  flags,
  side,
  from,
  to,
}: {
  readonly flags: readonly Flag[];
  readonly side: "out" | "back";
  readonly from: number;
  readonly to: number;
}) {
  return flags.map(({ hire, hour, level }) => (
    <span
      key={hire.id}
      className={classes("day-flag", `day-flag-${side}`, level !== null && `day-level-${level}`)}
      style={{ left: `${((hour - from) / (to - from)) * 100}%` }}
      title={`${hire.customer} ${dateText(side === "out" ? hire.from : hire.to, "time")}`}
    >
      <span className="day-arrow">{side === "out" ? "▼" : "▲"}</span>
      {level !== null && <span className="day-name">{lastName(hire.customer)}</span>}
    </span>
  ));
}

const lastName = (name: string): string => name.trim().split(/\s+/).at(-1) ?? name;

/** What goes out above, what comes back below, *now* moving along it. The lists below say the same in words. */
export function RoadOfTheDay({ today, isToday }: { readonly today: Today; readonly isToday: boolean }) {
  const now = hourOf(today.now);
  const box = useRef<HTMLDivElement>(null);
  // on a narrow screen the road is wider than its box: now stands in the middle of it
  useEffect(() => {
    const seen = box.current;
    const mark = seen?.querySelector<HTMLElement>(".day-now");
    if (seen !== null && mark) seen.scrollLeft = mark.offsetLeft - seen.clientWidth / 2;
  }, []);
  // what should have gone or come on another day stands in the lists, not on this day's road
  const goes = today.out.filter((hire) => hire.from.slice(0, 10) === today.date);
  const comes = today.back.filter((hire) => hire.to.slice(0, 10) === today.date);
  const hours = [...goes.map((hire) => hourOf(hire.from)), ...comes.map((hire) => hourOf(hire.to))];
  const seen = isToday && now >= 6 && now < 22 ? [...hours, now] : hours;
  const from = Math.floor(Math.min(8, ...seen));
  const to = Math.ceil(Math.max(18, ...seen) + 0.2);
  const short = (hire: Hire): Hire => ({ ...hire, customer: lastName(hire.customer) });
  const out = placeNames(goes.map(short), (hire) => hire.from, from, to);
  const back = placeNames(comes.map(short), (hire) => hire.to, from, to);
  const top = Math.max(0, ...out.map(({ level }) => level ?? 0));
  const low = Math.max(0, ...back.map(({ level }) => level ?? 0));
  return (
    <div ref={box} className="day-scroll" aria-hidden="true">
      <div className={classes("day-road", `day-top-${top}`, `day-low-${low}`)}>
        <Flags flags={out} side="out" from={from} to={to} />
        <div className="day-line">
          {hoursBetween(from, to).map((hour) => (
            <span key={hour} className="day-hour" style={{ left: `${((hour - from) / (to - from)) * 100}%` }}>
              {hour}
            </span>
          ))}
        </div>
        <Flags flags={back} side="back" from={from} to={to} />
        {isToday && now >= from && now <= to && (
          <span className="day-now" style={{ left: `${((now - from) / (to - from)) * 100}%` }}>
            <span className={classes("day-now-text", now - from < 1.5 && "day-now-text-right")}>
              {t("desk.today.now", { time: dateText(today.now, "time") })}
            </span>
          </span>
        )}
      </div>
    </div>
  );
}
