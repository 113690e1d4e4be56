import { useLiveQuery } from "dexie-react-hooks";
import type { Turnaround } from "../offline/database.ts";
import { keepRecord } from "../offline/keep-record.ts";
import { dateText, t } from "../parts/words.ts";
import { byStart } from "./by-start.ts";
import { device } from "./device.ts";
import { readyAt } from "./ready-at.ts";

type Job = Turnaround["jobs"][number];

/** Jobs of each turnaround that this device has as done and that may still wait to be sent. */
function useDoneHere(): ReadonlyMap<string, ReadonlySet<string>> | undefined {
  const { db } = device();
  return useLiveQuery(async () => {
    const done = new Map<string, Set<string>>();
    for (const { chain, record } of await db.records.toArray()) {
      const { content } = record;
      if (content.about !== "turnaround" || content.saw !== "done") continue;
      done.set(chain, (done.get(chain) ?? new Set()).add(String(content.job)));
    }
    return done;
  });
}

function tick(turnaround: Turnaround, job: Job): Promise<unknown> {
  return keepRecord(device().db, {
    kind: "look",
    refs: { hireId: turnaround.hireId, vehicleId: turnaround.vehicle.id },
    chain: turnaround.id,
    content: { about: "turnaround", saw: "done", job: job.id, minutes: job.minutes },
    via: "staff",
  });
}

/** What is to be done to each vehicle that came back, in the proposed order; ticked with or without signal. `known`: the depot has just said what there is. */
export function TurnaroundList({
  known,
  isSignedOut,
}: {
  readonly known: boolean;
  readonly isSignedOut: boolean;
}) {
  const { db } = device();
  const turnarounds = useLiveQuery(async () =>
    (await db.turnarounds.toArray()).map((kept) => kept.turnaround),
  );
  const doneHere = useDoneHere();
  if (turnarounds === undefined || doneHere === undefined) return null;
  const inOrder = turnarounds.toSorted((a, b) => (a.nextOut ?? "9999").localeCompare(b.nextOut ?? "9999"));
  return (
    <section className="card stack" aria-labelledby="turnarounds-title">
      <h2 id="turnarounds-title">{t("yard.turn.title")}</h2>
      {inOrder.length === 0 && (
        <p>{t(known ? "yard.turn.none" : isSignedOut ? "yard.list.notSignedIn" : "yard.list.noneKept")}</p>
      )}
      {inOrder.map((turnaround) => (
        <TurnaroundCard
          key={turnaround.id}
          turnaround={turnaround}
          done={doneHere.get(turnaround.id) ?? new Set()}
        />
      ))}
    </section>
  );
}

/** Whether it is the first job of its day: the day is said with that one. */
function isFirstOfDay(job: Job, open: readonly Job[]): boolean {
  const day = (each: Job) => each.start?.slice(0, 10);
  return byStart(open).find((each) => day(each) === day(job)) === job;
}

interface CardProps {
  readonly turnaround: Turnaround;
  readonly done: ReadonlySet<string>;
}

function TurnaroundCard({ turnaround, done }: CardProps) {
  const { vehicle, jobs, nextOut } = turnaround;
  const open = jobs.filter((job) => !job.done && !done.has(job.id));
  const minutes = open.reduce((sum, job) => sum + job.minutes, 0);
  const ready = readyAt(open);
  const [next] = byStart(open);
  return (
    <details className="yard-turn" open={nextOut !== null && open.length > 0}>
      <summary className="fold">
        <strong>
          {vehicle.name} <span className="nowrap">{vehicle.registration}</span>
        </strong>{" "}
        {open.length === 0 ? t("yard.turn.ready") : t("yard.turn.left", { n: open.length, minutes })}
        {nextOut !== null && <> · {t("yard.turn.out", { at: dateText(nextOut, "dayTime") })}</>}
        {ready !== null && <> · {t("yard.turn.readyAt", { at: dateText(ready, "dayTime") })}</>}
        {ready !== null && nextOut !== null && ready > nextOut && <strong> {t("yard.turn.tooLate")}</strong>}
      </summary>
      <ul className="yard-turn-jobs">
        {byStart(jobs).map((job) => {
          const isDone = job.done || done.has(job.id);
          return (
            <li key={job.id}>
              <label className={job === next ? "yard-turn-job yard-turn-next" : "yard-turn-job"}>
                <input
                  type="checkbox"
                  checked={isDone}
                  disabled={isDone}
                  onChange={() => void tick(turnaround, job)}
                />
                <span>
                  {t(`turnaround.${job.code as "strip"}`)}
                  <small className="quiet">
                    {" "}
                    {t("yard.turn.job", { minutes: job.minutes, skill: job.skill })}
                    {!isDone && job.start !== null && (
                      <> · {dateText(job.start, isFirstOfDay(job, open) ? "dayTime" : "time")}</>
                    )}
                  </small>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
