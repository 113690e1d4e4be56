import type { WalkRoundCheck } from "@setfair/engine";
import { keptOf, timesTyped } from "@setfair/words/guide";
import type { YardJob } from "../offline/database.ts";
import { distancesIn, t } from "../parts/words.ts";
import { draftAt } from "./draft-at.ts";
import { lookContent } from "./look-content.ts";
import { checkWords, measureWords } from "./names.ts";
import { isWithin, NumberPad, numberOfTyped } from "./number-pad.tsx";
import { Pictures } from "./pictures.tsx";
import { Press } from "./press.tsx";
import type { WalkActs } from "./use-walk.ts";
import { photographsOf } from "./walk-state.ts";

export interface CheckCardProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
  readonly check: WalkRoundCheck;
  readonly onClose: () => unknown;
  /** answered */
  readonly onDone: () => unknown;
}

/** One check: photograph first, then what was seen, read or counted. */
export function CheckCard({ job, acts, check, onClose, onDone }: CheckCardProps) {
  const photographs = photographsOf(acts.walk, check);
  const waits = check.photograph && photographs.length === 0;
  return (
    <section className="card stack-tight" aria-labelledby="check-name">
      <div className="check-head">
        <h2 id="check-name">{checkWords(check)}</h2>
        <Press look="quiet" onPress={onClose}>
          {t("yard.close")}
        </Press>
      </div>
      <Pictures job={job} now={photographs} before={photographsOf(acts.out, check)} />
      {waits && <p className="yard-note">{t("yard.photo.first")}</p>}
      {check.kind === "look" ? (
        <LookButtons
          job={job}
          acts={acts}
          check={check}
          photographs={photographs}
          waits={waits}
          onDone={onDone}
        />
      ) : (
        <Measure job={job} acts={acts} check={check} photographs={photographs} onDone={onDone} />
      )}
    </section>
  );
}

interface Inner extends Omit<CheckCardProps, "onClose"> {
  readonly photographs: readonly string[];
}

function LookButtons({ job, acts, check, photographs, waits, onDone }: Inner & { readonly waits: boolean }) {
  const { place, walk } = acts;
  const answer = async (outcome: "same" | "tooWetOrDirty") => {
    await acts.keep("look", lookContent(check, outcome, photographs));
    await onDone();
  };
  const mark = () => acts.goTo({ ...place, mark: draftAt(check.part ?? null) });
  const now = walk.answers.get(check.id)?.outcome;
  return (
    <>
      {now !== undefined && now !== null && (
        <p className="yard-note">{t("yard.saw.now", { saw: t(`yard.saw.${now}`) })}</p>
      )}
      <div className="three">
        <Press onPress={() => answer("same")} disabled={waits}>
          {t(job.walk === "out" ? "yard.look.fine" : "yard.look.same")}
        </Press>
        <Press onPress={mark}>{t(job.walk === "out" ? "yard.look.markOut" : "yard.look.mark")}</Press>
        <Press onPress={() => answer("tooWetOrDirty")}>{t("yard.look.tooWet")}</Press>
      </div>
    </>
  );
}

/** What the pad asks for: a share (0 to 1) is typed as per cent, a distance as the depot reads it; `times` as large as kept. */
function rangeOf(check: WalkRoundCheck) {
  const { unit, min, max, step } = check.reading ?? { unit: "", min: 0, max: 999, step: 1 };
  if (unit === "share")
    return { unit: "%", kept: unit, min: min * 100, max: max * 100, step: step * 100, times: 100 };
  const times = timesTyped(unit, distancesIn());
  if (times === 1) return { unit, kept: unit, min, max, step, times };
  const [least, most] = [Math.ceil(min * times), Math.floor(max * times)];
  return { unit: t("yard.miles"), kept: unit, min: least, max: most, step: 1, times };
}

async function keepMeasure(acts: WalkActs, check: WalkRoundCheck, value: number): Promise<void> {
  const photographs = photographsOf(acts.walk, check);
  const about = {
    about: check.id,
    checkId: check.id,
    view: check.view,
    ...(photographs.length === 0 ? {} : { photographs: [...photographs] }),
  };
  if (check.kind === "count")
    await acts.keep("count", { ...about, found: value, expected: check.expected ?? 0 });
  else {
    const { kept, times } = rangeOf(check);
    await acts.keep("reading", { ...about, value: keptOf(value, times), unit: kept });
  }
}

/** Stands where the next step always stands, while a number is typed. */
export function KeepMeasure({ acts, check, onDone }: Pick<CheckCardProps, "acts" | "check" | "onDone">) {
  const value = numberOfTyped(acts.place.typed);
  const { min, max } = rangeOf(check);
  const keepIt = async () => {
    if (!isWithin(value, min, max)) return;
    await keepMeasure(acts, check, value);
    await onDone();
  };
  return (
    <Press look="main" onPress={keepIt} disabled={!isWithin(value, min, max)}>
      {t("yard.reading.keep")}
    </Press>
  );
}

/** A reading or a count with its unit, its range and what it was when it left. */
function Measure({ job, acts, check, photographs, onDone }: Inner) {
  const { place } = acts;
  const range = rangeOf(check);
  const before = acts.out.answers.get(check.id);
  const all = async () => {
    await keepMeasure(acts, check, check.expected ?? 0);
    await onDone();
  };
  const wet = async () => {
    await acts.keep("look", lookContent(check, "tooWetOrDirty", photographs));
    await onDone();
  };
  return (
    <>
      {job.walk === "back" && before?.value != null && (
        <p className="yard-note">
          {t("yard.reading.out", { value: measureWords(before.value, before.unit ?? range.kept) })}
        </p>
      )}
      {check.kind === "count" && check.expected !== undefined && (
        <Press onPress={all}>{t("yard.count.all", { n: check.expected })}</Press>
      )}
      <NumberPad
        typed={place.typed}
        unit={range.unit}
        min={range.min}
        max={range.max}
        whole={range.step >= 1}
        label={checkWords(check)}
        onType={(typed) => acts.goTo({ ...place, typed })}
      />
      <Press onPress={wet}>{t("yard.reading.cannot")}</Press>
    </>
  );
}
