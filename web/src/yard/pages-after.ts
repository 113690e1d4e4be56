import type { YardJob } from "../offline/database.ts";
import type { Place } from "./use-walk.ts";

export type Purpose = "condition" | "briefing" | "agreement";

/** What is signed after the sides, in order: how the vehicle is, what was shown, and the hire itself. */
export function purposesOf(job: YardJob): readonly Purpose[] {
  if (job.walk === "back") return ["condition"];
  return [
    "condition",
    ...(["briefing", "agreement"] as const).filter((one) => job.signaturesNeeded.includes(one)),
  ];
}

/** The page after one signature; the summary once everything is signed. */
export function pageAfter(job: YardJob, purpose: Purpose): Place["page"] {
  const all = purposesOf(job);
  return all[all.indexOf(purpose) + 1] ?? "summary";
}
