import { useMutation, useQueryClient } from "@tanstack/react-query";
import type { Schemas } from "../../../api/client.ts";

export type Upkeep = Schemas["VehicleUpkeep"];
export const keyOf = (id: string) => ["upkeep", "vehicle", id];

export interface PieceProps {
  readonly id: string;
  readonly upkeep: Upkeep;
}

/** Shows what the server answers with, and lets every other list be asked again. */
export function useKeep<Body>(id: string, send: (body: Body) => Promise<Upkeep>) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: send,
    onSuccess: (page) => {
      queries.setQueryData(keyOf(id), page);
      void queries.invalidateQueries({ predicate: ({ queryKey }) => queryKey[1] !== "vehicle" });
    },
  });
}
