import { Refusal } from "../api/refusal.ts";
import type { HireStage } from "../store/types.ts";
import type { HireData } from "./hire-data.ts";

/** Refuses unless the hire stands at one of these stages. */
export function requireStage(data: HireData, ...stages: readonly HireStage[]): void {
  if (stages.includes(data.row.stage)) return;
  throw new Refusal("wrongStage", {
    problems: [{ path: "stage", expected: `${stages.join(" or ")}, but it is ${data.row.stage}` }],
  });
}
