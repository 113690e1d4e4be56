import { checkUpkeep } from "../upkeep/check-upkeep.ts";
import type { CheckDueDates } from "./types.ts";

/** The due dates alone, without distances and margin: what the diary asks before a vehicle is offered. */
export const checkDueDates: CheckDueDates = ({ vehicle, dueDates, to, today }) => {
  const book = dueDates.map(({ kind, dueOn }) => ({ kind, dueOn, dueKm: null }));
  const { result, findings } = checkUpkeep({ vehicle, book, from: to, to, today });
  const due = result.due.map(({ kind, dueOn, state }) => ({
    kind,
    dueOn: dueOn ?? today,
    state: state === "missing" || state === "inDate" ? state : ("lapses" as const),
  }));
  return { result: { due }, findings };
};
