import { useQuery } from "@tanstack/react-query";
import { useMemo } from "react";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { queries } from "../query-client.ts";
import { type DiaryModel, makeModel, plusDays } from "./diary-model.ts";

/** A season with what came before it; one answer of the server holds all of it. */
export const SHOWN_DAYS = 400;

/** The diary from a day on, and what is drawn of it. */
export function useDiary(from: string) {
  const to = plusDays(from, SHOWN_DAYS - 1);
  const found = useQuery({
    queryKey: ["diary", from],
    queryFn: () => take(client.GET("/api/diary", { params: { query: { from, to } } })),
    placeholderData: (before) => before,
    refetchInterval: 60_000,
  });
  const model = useMemo<DiaryModel | null>(
    () => (found.data === undefined ? null : makeModel(found.data)),
    [found.data],
  );
  return { found, model };
}

/** Whatever shows who has which vehicle is asked for again. */
export function diaryChanged(): void {
  for (const kind of ["diary", "today", "hires", "availability", "hireVehicles", "tidy"])
    void queries.invalidateQueries({ queryKey: [kind] });
}
