import { useEffect, useState } from "react";
import type { Guide } from "../offline/database.ts";
import type { GuideAnswer } from "../offline/fetch-guide.ts";
import { opensWithoutSignal } from "../offline/register-worker.ts";
import { afterPaint, phone, wasHereBefore } from "./phone.ts";

/** As long as a hirer waits for the depot's answer before this phone looks for what it has itself. */
const PATIENCE_MS = 3000;

export interface KeptGuideState {
  /** undefined: not looked yet */
  readonly kept: Guide | null | undefined;
  /** busy: not known yet · kept: what is shown is on this phone, with the files that show it · not: this phone could not keep it */
  readonly keeping: "busy" | "kept" | "not";
}

/**
 * The guide as this phone has kept it, and whether what the depot has just sent is kept. The store opens at once
 * where a visit before left it here; on a first visit the depot's answer is drawn first, since the store is a
 * third of what the page weighs.
 */
export function useKeptGuide(token: string, answer: GuideAnswer | "asking"): KeptGuideState {
  const [kept, setKept] = useState<Guide | null | undefined>(undefined);
  const [keeping, setKeeping] = useState<KeptGuideState["keeping"]>("busy");
  const [isWanted, setWanted] = useState(wasHereBefore);
  const isAsking = answer === "asking";
  useEffect(() => {
    if (!isAsking) return afterPaint(() => setWanted(true));
    const timer = setTimeout(() => setWanted(true), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, [isAsking]);
  useEffect(() => {
    if (!isWanted) return;
    let stop: (() => void) | undefined;
    let ended = false;
    phone()
      .then((store) => {
        if (!ended) stop = store.watchGuide(token, setKept);
      })
      .catch(() => setKept((before) => before ?? null));
    return () => {
      ended = true;
      stop?.();
    };
  }, [token, isWanted]);
  const fresh = answer !== "asking" && answer.outcome === "fresh" ? answer.guide : null;
  useEffect(() => {
    if (fresh === null || !isWanted) return;
    let ended = false;
    phone()
      .then((store) => store.keepGuide(token, fresh))
      .catch(() => false)
      // an insecure page has no worker at all, and its notice says so
      .then((done) => (done && isSecureContext ? opensWithoutSignal() : done))
      .then((done) => ended || setKeeping(done ? "kept" : "not"));
    return () => {
      ended = true;
    };
  }, [token, fresh, isWanted]);
  // with no answer, what stands here was kept before
  return { kept, keeping: keeping === "busy" && fresh === null && kept != null ? "kept" : keeping };
}
