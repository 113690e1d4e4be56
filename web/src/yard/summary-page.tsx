import type { WalkRoundCheck } from "@setfair/engine";
import type { ReactNode } from "react";
import type { YardJob } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { KeptPicture } from "./kept-picture.tsx";
import { checkWords, measureWords, sizeWords, viewWords } from "./names.ts";
import { purposesOf } from "./pages-after.ts";
import { Press } from "./press.tsx";
import type { WalkActs } from "./use-walk.ts";
import { missingChecks } from "./walk-state.ts";

interface SummaryProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
}

/** Everything that was seen, before anybody signs. */
export function SummaryPage({ job, acts }: SummaryProps) {
  const { walk, round, goTo, place } = acts;
  const missing = missingChecks(walk, round.steps);
  const all = round.steps.flatMap(({ checks }) => checks);
  const measured = all.filter(({ id }) => walk.answers.get(id)?.value !== null && walk.answers.has(id));
  const wet = all.filter(({ id }) => walk.answers.get(id)?.outcome === "tooWetOrDirty");
  const unsigned = purposesOf(job).find((purpose) => !walk.signed.has(`${purpose}.yard`));
  const pictures = [...walk.photographs.values()].reduce((total, some) => total + some.length, 0);
  const toSide = (view: string) =>
    goTo({
      ...place,
      page: round.steps.findIndex((step) => step.view === view),
      open: null,
      mark: null,
      typed: "",
    });
  const sign = async () => {
    if (unsigned === undefined) {
      location.hash = "#/";
      return;
    }
    const next = { ...place, page: unsigned, open: null, mark: null, typed: "" };
    if (walk.finished) await goTo(next);
    else
      await acts.keep(
        "walkFinished",
        { marks: walk.marks.length, photographs: pictures, missing: missing.map(({ check }) => check.id) },
        [],
        next,
      );
  };
  return (
    <>
      <ScrollMain className="yard-main stack">
        <div className="side-head">
          <h1>{t("yard.summary.title")}</h1>
          <p>
            {t("yard.summary.counts", {
              marks: walk.marks.length,
              photographs: pictures,
              readings: measured.length,
            })}
          </p>
        </div>
        {unsigned === undefined && <p className="yard-note yard-good">{t("yard.summary.signed")}</p>}
        {missing.length > 0 && (
          <Section title={t("yard.summary.missing", { n: missing.length })}>
            {missing.map(({ check, view }) => (
              <li key={check.id}>
                <Press look="row" onPress={() => toSide(view)}>
                  <span className="yard-row-what">{checkWords(check)}</span>
                  <span className="yard-row-state needs">{viewWords(view)}</span>
                </Press>
              </li>
            ))}
          </Section>
        )}
        {walk.marks.length > 0 && (
          <Section title={t("yard.summary.marks", { n: walk.marks.length })}>
            {walk.marks.map((mark) => (
              <li key={mark.recordId} className="mark-line">
                {mark.photographs[0] !== undefined && (
                  <KeptPicture sha256={mark.photographs[0]} words={viewWords(mark.view)} />
                )}
                <span>
                  <strong>{t(`yard.markKind.${mark.markKind}`)}</strong> {sizeWords(mark.sizeMm)} ·{" "}
                  {viewWords(mark.view)}
                </span>
              </li>
            ))}
          </Section>
        )}
        {measured.length > 0 && (
          <Section title={t("yard.summary.readings")}>
            {measured.map((check) => (
              <ReadingLine key={check.id} job={job} acts={acts} check={check} />
            ))}
          </Section>
        )}
        {wet.length > 0 && (
          <Section title={t("yard.summary.wet", { n: wet.length })}>
            {wet.map((check) => (
              <li key={check.id}>{checkWords(check)}</li>
            ))}
          </Section>
        )}
        <p>{t("yard.summary.whoPays")}</p>
      </ScrollMain>
      <footer className="yard-foot">
        <Press onPress={() => goTo({ ...place, page: 0, open: null, mark: null, typed: "" })}>
          {t("yard.summary.again")}
        </Press>
        <Press look="main" onPress={sign}>
          {unsigned === undefined ? t("yard.summary.toList") : t(`yard.sign.go.${unsigned}`)}
        </Press>
      </footer>
    </>
  );
}

/** One reading or count, beside what it was when it left. */
function ReadingLine({ job, acts, check }: SummaryProps & { readonly check: WalkRoundCheck }) {
  const now = acts.walk.answers.get(check.id);
  const before = acts.out.answers.get(check.id);
  return (
    <li className="reading-line">
      <span>{checkWords(check)}</span>
      <strong className="num">{measureWords(now?.value ?? 0, now?.unit ?? null)}</strong>
      {job.walk === "back" && before?.value != null && (
        <span>{t("yard.reading.out", { value: measureWords(before.value, before.unit) })}</span>
      )}
    </li>
  );
}

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="card stack-tight">
      <h2>{title}</h2>
      <ul>{children}</ul>
    </section>
  );
}
