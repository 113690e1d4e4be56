import { BadInput, checkLoad, type LoadPlan, type VehicleDescription } from "@setfair/engine";
import { useDeferredValue, useMemo } from "react";
import type { Schemas } from "../../../api/client.ts";
import type { HirePageData } from "../use-hire.ts";

export type LoadAnswerNow = ReturnType<typeof checkLoad> | null;

/** What the engine says of the load as it stands on the page, at once and without asking the server; null where it cannot be reckoned yet. */
export function useLoadAnswer(page: HirePageData, plan: Schemas["LoadPlan"]): LoadAnswerNow {
  const shown = useDeferredValue(plan);
  return useMemo(() => {
    if (page.vehicle === null) return null;
    try {
      // the server's types are of the same schema; the vehicle comes checked
      return checkLoad({
        vehicle: page.vehicle.description as VehicleDescription,
        party: page.party as Parameters<typeof checkLoad>[0]["party"],
        load: shown as LoadPlan,
      });
    } catch (error) {
      // a plan that does not fit the vehicle is said by the server, field by field
      if (error instanceof BadInput) return null;
      throw error;
    }
  }, [page.vehicle, page.party, shown]);
}
