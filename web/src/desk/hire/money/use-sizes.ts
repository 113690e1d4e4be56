import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { sendOrRead } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";
import { asksWith, type Sizes, sizesIn } from "./sizes.ts";

/** The sizes wanted of a hire's extras, beside the quote: read from what was asked, kept before the quote is made. */
export function useSizes(hireId: string, isOpen: boolean) {
  const params = { path: { id: hireId } };
  const stock = useQuery({
    queryKey: ["hireStock", hireId],
    queryFn: () => take(client.GET("/api/hires/{id}/stock", { params })),
    enabled: isOpen,
  });
  const [draft, setSizes] = useState<Sizes | null>(null);
  const { asks = [], version = 0 } = stock.data ?? {};
  const basedOn = String(version);
  return {
    sizes: draft ?? sizesIn(asks),
    setSizes,
    isDirty: draft !== null,
    known: new Map((stock.data?.kinds ?? []).map(({ kind, sizes }) => [kind, sizes] as const)),
    /** Asks for the sizes of these extras. */
    async keep(extras: readonly string[]): Promise<void> {
      if (draft === null) return;
      const body = { asks: [...asksWith(asks, draft, extras)] };
      queries.setQueryData(
        ["hireStock", hireId],
        await sendOrRead(
          () =>
            take(client.PUT("/api/hires/{id}/stock", { params: { ...params, query: { basedOn } }, body })),
          () => stock.refetch(),
        ),
      );
      setSizes(null);
    },
  };
}
