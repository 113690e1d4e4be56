import { useEffect, useState } from "react";
import type { KeptRecord } from "../offline/database.ts";
import { phone } from "./phone.ts";

/** This phone's own records of a chain, in order; none until its store is wanted and open. */
export function useRecords(chain: string | null, isWanted = true): readonly KeptRecord[] {
  const [records, setRecords] = useState<readonly KeptRecord[]>([]);
  useEffect(() => {
    if (chain === null || !isWanted) return;
    let stop: (() => void) | undefined;
    let ended = false;
    phone()
      .then((store) => {
        if (!ended) stop = store.watchChain(chain, setRecords);
      })
      .catch(() => undefined);
    return () => {
      ended = true;
      stop?.();
    };
  }, [chain, isWanted]);
  return records;
}
