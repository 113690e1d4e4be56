import { icon } from "@setfair/drawing";
import { useState } from "react";
import type { YardJob } from "../offline/database.ts";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { BriefingPage } from "./briefing-page.tsx";
import { DefectsPage } from "./defects-page.tsx";
import { openDefectsOf } from "./open-defects.ts";
import { OutboxLine } from "./outbox-line.tsx";
import { RainLock } from "./rain-lock.tsx";
import { SidePage } from "./side-page.tsx";
import { SignPage } from "./sign-page.tsx";
import { SummaryPage } from "./summary-page.tsx";
import { useWalk, type WalkActs } from "./use-walk.ts";

/** One walk-round, from the first side to the signatures. */
export function WalkPage({ job }: { readonly job: YardJob }) {
  const acts = useWalk(job);
  const [locked, setLocked] = useState(false);
  return (
    <>
      <header className="yard-bar">
        <a href="#/" className="yard-bar-name">
          {t(job.walk === "out" ? "yard.bar.out" : "yard.bar.back", {
            name: job.vehicle.name,
            registration: job.vehicle.registration,
          })}
        </a>
        <OutboxLine />
        <button
          type="button"
          className="yard-bar-lock"
          onClick={() => setLocked(true)}
          aria-label={t("yard.lock.do")}
        >
          <SvgView node={icon("lock")} />
        </button>
      </header>
      {acts === null ? <p className="state-box">{t("yard.loading")}</p> : <Inside job={job} acts={acts} />}
      {locked && <RainLock onOpen={() => setLocked(false)} />}
    </>
  );
}

function Inside({ job, acts }: { readonly job: YardJob; readonly acts: WalkActs }) {
  const { page } = acts.place;
  if (page === "summary") return <SummaryPage job={job} acts={acts} />;
  if (page === "briefing") return <BriefingPage job={job} acts={acts} />;
  if (page === "condition" && openDefectsOf(job).length > 0) return <DefectsPage job={job} acts={acts} />;
  if (page === "agreement" || page === "condition") return <SignPage job={job} acts={acts} purpose={page} />;
  const step = acts.round.steps[page];
  if (step === undefined) return <SummaryPage job={job} acts={acts} />;
  return <SidePage job={job} acts={acts} step={step} index={page} />;
}
