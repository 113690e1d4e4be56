import { useMutation, useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { queries } from "../query-client.ts";

export type HirePageData = Schemas["HirePage"];

export interface PartProps {
  readonly page: HirePageData;
}

/** The whole hire as the server computes it. */
export function useHire(id: string) {
  return useQuery({
    queryKey: ["hire", id],
    queryFn: () => take(client.GET("/api/hires/{id}", { params: { path: { id } } })),
  });
}

/** Everything that follows from a hire is asked for again after it changed. */
export function hireChanged(page: HirePageData): void {
  const { id } = page.hire;
  queries.setQueryData(["hire", id], page);
  for (const kind of ["hireMoney", "forecast", "briefing", "differences", "settlement", "abroad"]) {
    void queries.invalidateQueries({ queryKey: [kind, id] });
  }
  for (const kind of ["today", "hires", "availability"]) void queries.invalidateQueries({ queryKey: [kind] });
}

/** One act on a hire: sends it, then shows the hire as it stands after it. */
export function useHireAct<Body = void>(
  ask: (body: Body) => Promise<HirePageData>,
  done?: (page: HirePageData) => void,
) {
  return useMutation({
    mutationFn: ask,
    onSuccess: (page) => {
      hireChanged(page);
      done?.(page);
    },
  });
}
