import type { ProposeSchedule } from "./types.ts";

/** Puts jobs in time; being written. */
export const proposeSchedule: ProposeSchedule = () => {
  throw new Error("proposeSchedule: not written yet");
};
