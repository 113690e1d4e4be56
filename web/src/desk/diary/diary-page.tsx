import { useState } from "react";
import { useLocation } from "wouter";
import { Button, Empty, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { startEnquiry } from "../enquiry/start-enquiry.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { AtCursor } from "./at-cursor.tsx";
import { BlockDialog } from "./block-dialog.tsx";
import { DiaryGrid } from "./diary-grid.tsx";
import {
  barsOn,
  type Diary,
  type DiaryHire,
  type DiaryModel,
  daysBetween,
  firstOfMonth,
  isFree,
  plusDays,
  plusMonths,
} from "./diary-model.ts";
import { MoveDialog } from "./move-dialog.tsx";
import { TidyDialog } from "./tidy-dialog.tsx";
import { useDiary } from "./use-diary.ts";
import type { Place } from "./use-diary-keys.ts";
import "./diary.css";

/** Where the diary was left; looked at again from there. */
interface Left {
  readonly start: string;
  readonly date: string;
  /** where days are selected, the last of them */
  readonly until: string;
  readonly vehicleId: string | null;
}

/** How far ahead the diary is tidied: further on most of it is still to be sold. */
const TIDIED_DAYS = 120;

/** Two months back stay in reach of a scroll. */
const startFor = (date: string): string => plusMonths(firstOfMonth(date), -2);
const namePxFor = (): number => (window.innerWidth < 600 ? 104 : 168);

type Shown =
  | null
  | { readonly what: "move"; readonly hire: DiaryHire; readonly to: string | null }
  | { readonly what: "block" | "tidy" };

/** Who has which vehicle when. */
export default function DiaryPage() {
  usePageTitle(t("desk.nav.diary"));
  const { today } = useSignedIn();
  const first: Left = { start: startFor(today), date: today, until: today, vehicleId: null };
  const { value: left, set } = useDraft<Left>("diary", first);
  const { found, model } = useDiary(left.start);
  const goDate = (date: string) => set({ ...left, start: startFor(date), date, until: date });
  return (
    <div className="diary">
      <div className="page-head">
        <h1>{t("desk.nav.diary")}</h1>
        <MonthPick
          date={left.date}
          today={today}
          model={model}
          goDate={goDate}
          set={(date) => set({ ...left, date, until: date })}
        />
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {model !== null && found.data !== undefined && model.rows.length === 0 && (
        <Empty>{t("diary.noVehicles")}</Empty>
      )}
      {model !== null && found.data !== undefined && model.rows.length > 0 && (
        <Loaded model={model} diary={found.data} left={left} set={set} goDate={goDate} today={today} />
      )}
    </div>
  );
}

function MonthPick({
  date,
  today,
  model,
  goDate,
  set,
}: {
  readonly date: string;
  readonly today: string;
  readonly model: DiaryModel | null;
  readonly goDate: (date: string) => void;
  readonly set: (date: string) => void;
}) {
  const go = (next: string) => {
    const day = model === null ? -1 : daysBetween(model.start, next);
    if (model !== null && day >= 0 && day < model.days) set(next);
    else goDate(next);
  };
  return (
    <div className="day-pick">
      <Button look="quiet" onPress={() => go(plusMonths(date, -1))} aria-label={t("diary.monthBefore")}>
        ‹
      </Button>
      <span className="diary-when">{dateText(date, "full")}</span>
      <Button look="quiet" onPress={() => go(plusMonths(date, 1))} aria-label={t("diary.monthAfter")}>
        ›
      </Button>
      <Button onPress={() => go(today)}>{t("diary.today")}</Button>
    </div>
  );
}

interface LoadedProps {
  readonly model: DiaryModel;
  readonly diary: Diary;
  readonly left: Left;
  readonly set: (next: Left) => void;
  readonly goDate: (date: string) => void;
  readonly today: string;
}

function Loaded({ model, diary, left, set, goDate, today }: LoadedProps) {
  const [, navigate] = useLocation();
  const [shown, setShown] = useState<Shown>(null);
  const [namePx] = useState(namePxFor);
  const cursor = cursorOf(model, left);
  const until = clampDay(model, daysBetween(model.start, left.until));
  const selection = [Math.min(cursor.day, until), Math.max(cursor.day, until)] as const;
  const row = model.rows[cursor.row];
  if (row === undefined) return null;
  const onGo = (place: Place, extend: boolean) => {
    const date = plusDays(model.start, place.day);
    const vehicleId = model.rows[place.row]?.vehicle.id ?? null;
    if (extend && vehicleId === row.vehicle.id) set({ ...left, vehicleId, until: date });
    else set({ ...left, vehicleId, date, until: date });
  };
  const bars = barsOn(row, cursor.day);
  const days = [plusDays(model.start, selection[0]), plusDays(model.start, selection[1])] as const;
  const enquire = () => {
    startEnquiry(row.vehicle.id, days[0], days[1]);
    navigate("/enquiry");
  };
  const open = () => {
    const hire = bars.findLast((bar) => bar.hire !== null)?.hire;
    if (hire !== null && hire !== undefined) navigate(placeOfHire(hire.id));
    else if (isFree(row, selection[0], selection[1])) enquire();
  };
  const onDrop = (hireId: string, to: number) => {
    const hire = diary.hires.find(({ id }) => id === hireId);
    if (hire !== undefined) setShown({ what: "move", hire, to: model.rows[to]?.vehicle.id ?? null });
  };
  const close = () => setShown(null);
  return (
    <>
      <DiaryGrid
        model={model}
        cursor={cursor}
        selection={selection}
        until={until}
        namePx={namePx}
        now={diary.now}
        today={today}
        onGo={onGo}
        onDrop={onDrop}
        goDate={goDate}
        open={open}
      />
      <AtCursor
        row={row}
        bars={bars}
        days={days}
        isFree={isFree(row, selection[0], selection[1])}
        onEnquire={enquire}
        onBlock={() => setShown({ what: "block" })}
        onMove={(hire) => setShown({ what: "move", hire, to: null })}
        onTidy={() => setShown({ what: "tidy" })}
      />
      {shown?.what === "move" && <MoveDialog hire={shown.hire} to={shown.to} onClose={close} />}
      {shown?.what === "block" && (
        <BlockDialog vehicle={row.vehicle} from={days[0]} to={days[1]} onClose={close} />
      )}
      {shown?.what === "tidy" && (
        <TidyDialog
          vehicles={diary.vehicles}
          from={today}
          to={plusDays(today, TIDIED_DAYS)}
          onClose={close}
        />
      )}
    </>
  );
}

const clampDay = (model: DiaryModel, day: number) => Math.max(0, Math.min(model.days - 1, day));

function cursorOf(model: DiaryModel, left: Left): Place {
  const row = model.rows.findIndex(({ vehicle }) => vehicle.id === left.vehicleId);
  return { row: Math.max(0, row), day: clampDay(model, daysBetween(model.start, left.date)) };
}
