import type { Settlement } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { queries } from "../../query-client.ts";

export type SettlementState = Schemas["SettlementState"];
export type Entry = SettlementState["entries"][number];

/** The server sends the engine's own answer. */
export const resultOf = (state: SettlementState): Settlement => state.result as Settlement;

/** The settlement as it stands, with all that was said and paid. */
export function useSettlement(id: string) {
  return useQuery({
    queryKey: ["settlement", id],
    queryFn: () => take(client.GET("/api/hires/{id}/settlement", { params: { path: { id } } })),
  });
}

/** One entry on a settlement; everything that follows from it is asked for again. */
export function useSettlementAct<Body = void>(
  id: string,
  ask: (body: Body) => Promise<SettlementState>,
  done?: () => void,
) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (state) => {
      queries.setQueryData(["settlement", id], state);
      for (const kind of ["hire", "hireMoney", "differences", "notes"])
        void queries.invalidateQueries({ queryKey: [kind, id] });
      for (const kind of ["today", "hires", "money"]) void queries.invalidateQueries({ queryKey: [kind] });
      done?.();
    },
  });
}

/** A text of an entry's document; empty where it has none of that name. */
export const saidIn = ({ document }: Entry, name: string): string => {
  const value = document[name];
  return typeof value === "string" ? value : "";
};
export const numberIn = ({ document }: Entry, name: string): number => Number(document[name] ?? 0);
export const hashesIn = ({ document }: Entry, name: string): readonly string[] => {
  const value = document[name];
  return Array.isArray(value) ? value.map(String) : [];
};
