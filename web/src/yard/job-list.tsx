import { useLiveQuery } from "dexie-react-hooks";
import { useCallback, useEffect, useState } from "react";
import type { YardJob } from "../offline/database.ts";
import { type FetchAnswer, fetchJobs, fetchPictures } from "../offline/fetch-jobs.ts";
import { fetchTurnarounds } from "../offline/fetch-turnarounds.ts";
import { askWhatToForget } from "../offline/forget.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { dateText, t } from "../parts/words.ts";
import { device } from "./device.ts";
import { ForgottenNote } from "./forgotten-note.tsx";
import { useCare } from "./outbox-page.tsx";
import { Press } from "./press.tsx";
import { SignIn } from "./sign-in.tsx";
import { SignedInLine } from "./signed-in-line.tsx";
import { TurnaroundList } from "./turnaround-list.tsx";

/** What an empty list means: nothing is due only where the depot has just said so. */
const NONE = {
  asking: "yard.loading",
  fresh: "yard.list.none",
  kept: "yard.list.noneKept",
  signIn: "yard.list.notSignedIn",
} as const;

interface Stage {
  readonly begun: number;
  readonly finished: boolean;
  readonly waiting: number;
}

/** What is due out and back; from this device's own store, so that it is here with no signal. */
export function JobList() {
  const { db } = device();
  const [answer, setAnswer] = useState<FetchAnswer | "asking">("asking");
  const ask = useCallback(async () => {
    const said = await fetchJobs(db);
    setAnswer(said);
    if (said !== "fresh") return;
    void fetchPictures(db);
    // somebody has just signed in, or the list was asked for anew: a contact like the others
    void askWhatToForget(db);
    void fetchTurnarounds(db);
  }, [db]);
  useEffect(() => {
    void ask();
    const again = () => void ask();
    addEventListener("online", again);
    return () => removeEventListener("online", again);
  }, [ask]);

  const jobs = useLiveQuery(async () =>
    (await db.jobs.toArray()).sort((a, b) => (a.job.due < b.job.due ? -1 : 1)),
  );
  const stages = useLiveQuery(async () => {
    const found = new Map<string, Stage>();
    for (const { chain, state, record } of await db.records.toArray()) {
      const before = found.get(chain) ?? { begun: 0, finished: false, waiting: 0 };
      found.set(chain, {
        begun: before.begun + 1,
        finished: before.finished || record.kind === "walkFinished",
        waiting: before.waiting + (state === "waiting" ? 1 : 0),
      });
    }
    return found;
  });
  const care = useCare();
  const [fromSheet, setFromSheet] = useState(false);
  if (jobs === undefined || stages === undefined) return <p className="state-box">{t("yard.loading")}</p>;
  const fetchedAt = jobs[0]?.fetchedAt;
  // what is done stands last: it needs nobody any more
  const isDone = ({ job }: { readonly job: YardJob }) => job.done || stages.get(job.id)?.finished === true;
  const of = (walk: "out" | "back") =>
    jobs.filter(({ job }) => job.walk === walk).toSorted((a, b) => Number(isDone(a)) - Number(isDone(b)));
  return (
    <ScrollMain className="yard-main stack">
      <div className="row spread">
        <h1>{t("yard.list.title")}</h1>
        <Press onPress={ask}>{t("yard.list.again")}</Press>
      </div>
      {care?.secure === false && <p className="yard-note yard-warn">{t("yard.care.notSecure")}</p>}
      {care?.storage === "refused" && <p className="yard-note">{t("yard.care.refused")}</p>}
      {answer === "kept" && fetchedAt !== undefined && (
        <p className="yard-note" role="status">
          {t("yard.list.kept", {
            at: dateText(fetchedAt, "dayTime", Intl.DateTimeFormat().resolvedOptions().timeZone),
          })}
        </p>
      )}
      <ForgottenNote />
      {answer === "signIn" && <SignIn onDone={ask} />}
      {(["back", "out"] as const).map((walk) => (
        <section key={walk} className="card" aria-labelledby={`jobs-${walk}`}>
          <h2 id={`jobs-${walk}`}>{t(walk === "out" ? "yard.list.out" : "yard.list.back")}</h2>
          {of(walk).length === 0 && <p>{t(NONE[answer])}</p>}
          <ul>
            {of(walk).map(({ job }) => (
              <li key={job.id}>
                <JobRow job={job} stage={stages.get(job.id)} fromSheet={fromSheet} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      <label className="yard-tick">
        <input
          type="checkbox"
          checked={fromSheet}
          onChange={(event) => setFromSheet(event.currentTarget.checked)}
        />
        {t("yard.sheet.choose")}
      </label>
      <TurnaroundList known={answer === "fresh"} isSignedOut={answer === "signIn"} />
      {answer !== "signIn" && <SignedInLine onOut={() => setAnswer("signIn")} />}
    </ScrollMain>
  );
}

interface JobRowProps {
  readonly job: YardJob;
  readonly stage: Stage | undefined;
  readonly fromSheet: boolean;
}

function JobRow({ job, stage, fromSheet }: JobRowProps) {
  const words =
    stage === undefined
      ? job.done
        ? t("yard.job.doneElsewhere")
        : t("yard.job.notBegun")
      : stage.finished
        ? t(stage.waiting > 0 ? "yard.job.finishedWaiting" : "yard.job.finished", { waiting: stage.waiting })
        : t("yard.job.underWay");
  return (
    <a
      className="yard-row"
      href={`#/${fromSheet && !job.done ? "sheet" : "walk"}/${encodeURIComponent(job.id)}`}
    >
      <span className="yard-row-time num">
        {dateText(job.due, "time")}
        <small>{dateText(job.due.slice(0, 10), "day")}</small>
      </span>
      <span className="yard-row-what">
        <strong>
          {job.vehicle.name} <span className="nowrap">{job.vehicle.registration}</span>
        </strong>
        <span>
          {job.customer} · {job.reference}
        </span>
        {job.secondLook != null && (
          <span>{t("settling.look.job", { at: dateText(job.secondLook.until, "dayTime") })}</span>
        )}
      </span>
      <span className="yard-row-state">{words}</span>
    </a>
  );
}
