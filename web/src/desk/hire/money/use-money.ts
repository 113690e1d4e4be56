import { useMutation, useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { queries } from "../../query-client.ts";

export type HireMoney = Schemas["HireMoney"];

/** A new id for something that is recorded once however often it is sent. */
export const newId = (): string =>
  `pay-${Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, "0")).join("")}`;

/** Ledger, schedule, holds and invoices of a hire. */
export function useMoney(id: string) {
  return useQuery({
    queryKey: ["hireMoney", id],
    queryFn: () => take(client.GET("/api/hires/{id}/money", { params: { path: { id } } })),
  });
}

/** One act on the money of a hire; everything that follows from it is asked for again. */
export function useMoneyAct<Body = void>(
  id: string,
  ask: (body: Body) => Promise<HireMoney>,
  done?: () => void,
) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (money) => {
      queries.setQueryData(["hireMoney", id], money);
      for (const kind of ["hire", "settlement"]) void queries.invalidateQueries({ queryKey: [kind, id] });
      for (const kind of ["money", "today", "hires"]) void queries.invalidateQueries({ queryKey: [kind] });
      done?.();
    },
  });
}
