import { type KeyboardEvent, useRef } from "react";
import { type DiaryModel, daysBetween, findPlate, plusDays, plusMonths } from "./diary-model.ts";

export interface Place {
  readonly row: number;
  readonly day: number;
}

export interface KeyActs {
  readonly model: DiaryModel;
  readonly cursor: Place;
  /** the day up to which days are taken together; the cursor's own where they are not */
  readonly until: number;
  readonly go: (place: Place, extend: boolean) => void;
  /** a day outside what is shown: the diary is asked for around it */
  readonly goDate: (date: string) => void;
  readonly open: () => void;
  readonly today: string;
}

/** How long a plate may take to type, letter by letter. */
const TYPING_MS = 900;

/**
 * Arrows move, with Shift they take days together; Home and End go to the ends of a fortnight, Page Up and Page
 * Down go a month, T goes to today, Enter opens; letters and digits look for a registration.
 */
export function useDiaryKeys(acts: KeyActs): (event: KeyboardEvent) => void {
  const typed = useRef({ text: "", at: 0 });
  const { model, cursor, go, goDate } = acts;
  const date = plusDays(model.start, cursor.day);

  const toDate = (next: string) => {
    const day = daysBetween(model.start, next);
    if (day >= 0 && day < model.days) go({ ...cursor, day }, false);
    else goDate(next);
  };
  const step = (rows: number, days: number, extend: boolean) => {
    const row = Math.max(0, Math.min(model.rows.length - 1, cursor.row + rows));
    const day = (extend ? acts.until : cursor.day) + days;
    if (day < 0 || day >= model.days) return goDate(plusDays(model.start, day));
    go({ row, day }, extend);
  };
  const letter = (key: string) => {
    const now = performance.now();
    const isGoingOn = now - typed.current.at < TYPING_MS && typed.current.text !== "";
    if (key.toLowerCase() === "t" && !isGoingOn) return toDate(acts.today);
    const text = isGoingOn ? typed.current.text + key : key;
    typed.current = { text, at: now };
    const row = findPlate(model.rows, text, cursor.row + (isGoingOn ? 0 : 1));
    if (row >= 0) go({ ...cursor, row }, false);
  };
  const keys = new Map<string, (event: KeyboardEvent) => void>([
    ["ArrowLeft", ({ shiftKey }) => step(0, -1, shiftKey)],
    ["ArrowRight", ({ shiftKey }) => step(0, 1, shiftKey)],
    ["ArrowUp", () => step(-1, 0, false)],
    ["ArrowDown", () => step(1, 0, false)],
    ["Home", ({ ctrlKey }) => (ctrlKey ? step(-model.rows.length, 0, false) : step(0, -14, false))],
    ["End", ({ ctrlKey }) => (ctrlKey ? step(model.rows.length, 0, false) : step(0, 14, false))],
    ["PageUp", () => toDate(plusMonths(date, -1))],
    ["PageDown", () => toDate(plusMonths(date, 1))],
    ["Enter", () => acts.open()],
    [" ", () => acts.open()],
  ]);
  return (event) => {
    const act = keys.get(event.key);
    if (act !== undefined) {
      event.preventDefault();
      return act(event);
    }
    if (event.ctrlKey || event.metaKey || event.altKey || !/^[a-z0-9]$/i.test(event.key)) return;
    event.preventDefault();
    letter(event.key);
  };
}
