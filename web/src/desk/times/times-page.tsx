import { useMutation, useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Loading, NumberField } from "../../parts/index.ts";
import { say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeepRow } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { GateHours } from "./gate-hours.tsx";
import type { PieceProps } from "./piece-props.ts";
import "../hire/hire.css";

type Kept = Schemas["DepotTimes"];

const MOST_MINUTES = 600;
const EXPERIENCES = ["first", "some", "knowsThisVehicle"] as const;

/** How long things take at this depot, and from when each gate counts. */
export default function TimesPage() {
  usePageTitle(t("times.title"));
  const found = useQuery({
    queryKey: ["depotTimes"],
    queryFn: () => take(client.GET("/api/depot/times")),
  });
  return (
    <>
      <div className="page-head">
        <h1>{t("times.title")}</h1>
        <p className="quiet">{t("times.lead")}</p>
        <div className="page-acts">
          <Link href="/depot" className="link-row">
            {t("times.toDepot")}
          </Link>
          <Link href="/depot/figures" className="link-row">
            {t("figures.title")}
          </Link>
        </div>
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined && <TimesForm now={found.data} />}
    </>
  );
}

function TimesForm({ now }: { readonly now: Kept }) {
  const mayWrite = useSignedIn().may.includes("terms.write");
  const draft = useGuardedDraft("depotTimes", { value: now.times, version: now.version });
  const { value, basedOn } = draft;
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () => take(client.PUT("/api/depot/times", { params: { query: { basedOn } }, body: value })),
        () => queries.invalidateQueries({ queryKey: ["depotTimes"] }),
      ),
    onSuccess: (answer) => {
      draft.done();
      queries.setQueryData(["depotTimes"], answer);
      for (const kind of ["hire", "today", "turnarounds"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  const pieces: PieceProps = {
    value,
    usual: now.usual,
    change: (part) => draft.set({ ...value, ...part }),
    failure: save.error,
    mayWrite,
  };
  return (
    <div className="stack">
      <Keys {...pieces} />
      <Jobs {...pieces} />
      <GateHours {...pieces} />
      {mayWrite ? (
        <section className="card stack-tight" aria-label={t("times.keep")}>
          <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
          <KeepRow label={t("times.keep")} save={save} draft={draft} />
        </section>
      ) : (
        <p className="quiet">{t("times.managerOnly")}</p>
      )}
    </div>
  );
}

interface MinutesProps {
  readonly label: string;
  readonly value: number;
  readonly usual: number;
  readonly error: string | undefined;
  readonly mayWrite: boolean;
  readonly onChange: (minutes: number) => void;
}

/** Minutes for one person, with what is usual where they differ from it. */
function Minutes({ label, value, usual, error, mayWrite, onChange }: MinutesProps) {
  if (!mayWrite) return <p>{t("times.said", { label, n: value })}</p>;
  return (
    <NumberField
      label={label}
      unit={t("times.minutes")}
      note={value === usual ? undefined : t("times.usual", { n: usual })}
      value={value}
      min={0}
      max={MOST_MINUTES}
      onChange={(n) => onChange(n ?? 0)}
      error={error}
    />
  );
}

function Keys({ value, usual, change, failure, mayWrite }: PieceProps) {
  const { demonstrationMinutes } = value;
  return (
    <section className="card stack" aria-labelledby="keys-title">
      <h2 id="keys-title">{t("times.keys")}</h2>
      <div className="sheet-fields">
        {(["handOverMinutes", "takeBackMinutes"] as const).map((id) => (
          <Minutes
            key={id}
            label={t(`times.${id}`)}
            value={value[id]}
            usual={usual[id]}
            mayWrite={mayWrite}
            error={problemAt(failure, id)}
            onChange={(n) => change({ [id]: n })}
          />
        ))}
        {EXPERIENCES.map((id) => (
          <Minutes
            key={id}
            label={t("times.demonstration", { id })}
            value={demonstrationMinutes[id]}
            usual={usual.demonstrationMinutes[id]}
            mayWrite={mayWrite}
            error={problemAt(failure, `demonstrationMinutes.${id}`)}
            onChange={(n) => change({ demonstrationMinutes: { ...demonstrationMinutes, [id]: n } })}
          />
        ))}
      </div>
    </section>
  );
}

function Jobs({ value, usual, change, failure, mayWrite }: PieceProps) {
  const { jobMinutes } = value;
  return (
    <section className="card stack" aria-labelledby="jobs-title">
      <h2 id="jobs-title">{t("times.jobs")}</h2>
      <p className="quiet">{t("times.jobsNote")}</p>
      <div className="sheet-fields">
        {Object.entries(usual.jobMinutes).map(([code, minutes]) => (
          <Minutes
            key={code}
            label={say(`turnaround.${code}`)}
            value={jobMinutes[code] ?? minutes}
            usual={minutes}
            mayWrite={mayWrite}
            error={problemAt(failure, `jobMinutes.${code}`)}
            onChange={(n) => change({ jobMinutes: { ...jobMinutes, [code]: n } })}
          />
        ))}
      </div>
    </section>
  );
}
