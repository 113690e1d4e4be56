import { useId } from "react";
import { t } from "../../parts/words.ts";
import type { HirePageData } from "./use-hire.ts";

export interface WalkCardProps {
  readonly title: string;
  readonly walk: HirePageData["records"]["out"];
}

/** How far a walk-round has come, and the way to the yard where it is done. */
export function WalkCard({ title, walk }: WalkCardProps) {
  const id = useId();
  const state = walk.signed
    ? "handover.walkSigned"
    : walk.started
      ? "handover.walkStarted"
      : "handover.walkNotStarted";
  return (
    <section className="card row spread" aria-labelledby={id}>
      <div>
        <h2 id={id}>{title}</h2>
        <p className="quiet">
          {t(state, { marks: walk.marks, photos: walk.photos, readings: walk.readings })}
        </p>
      </div>
      <a href="/yard" className="button">
        {t("handover.openYard")}
      </a>
    </section>
  );
}
