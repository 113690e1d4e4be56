import type { MarkKind, WalkRoundCheck, WalkRoundStep } from "@setfair/engine";
import { t } from "../parts/words.ts";
import { lookContent } from "./look-content.ts";
import { sizeWords } from "./names.ts";
import { Press } from "./press.tsx";
import type { MarkDraft, WalkActs } from "./use-walk.ts";

const KINDS: readonly MarkKind[] = ["scratch", "dent", "tear", "stain", "crack", "missing"];
const SIZES_MM = [5, 20, 50, 100, 300, 1000];

export interface MarkCardProps {
  readonly acts: WalkActs;
  readonly step: WalkRoundStep;
  readonly check: WalkRoundCheck | null;
  readonly part: string;
}

/** Photographs taken of the check, of the part or of the side go with the mark. */
function photographsFor({ acts, step, check, part }: MarkCardProps): readonly string[] {
  const about = [check?.id, part, check?.part, `view.${step.view}`];
  return [...new Set(about.flatMap((one) => acts.walk.photographs.get(one ?? "") ?? []))];
}

/** Stands where the next step always stands. */
export function KeepMark(props: MarkCardProps) {
  const { acts, step, check, part } = props;
  const { place } = acts;
  const draft = place.mark!;
  const photographs = [...photographsFor(props)];
  const done = { ...place, open: null, mark: null, typed: "" };
  const keepIt = async () => {
    if (draft.markKind === null) return;
    const content = {
      about: part,
      part,
      view: step.view,
      xShare: draft.xShare,
      yShare: draft.yShare,
      markKind: draft.markKind,
      ...(draft.sizeMm === null ? {} : { sizeMm: draft.sizeMm }),
      ...(draft.note.trim() === "" ? {} : { note: draft.note.trim() }),
      ...(check === null ? {} : { checkId: check.id }),
      photographs,
    };
    await acts.keep("mark", content, [], check === null ? done : place);
    if (check !== null) await acts.keep("look", lookContent(check, "mark", photographs), [], done);
  };
  return (
    <Press
      look="main"
      onPress={keepIt}
      disabled={draft.markKind === null || (photographs.length === 0 && acts.walk.late === null)}
    >
      {t("yard.mark.keep")}
    </Press>
  );
}

/** Where, what and how large. Whose it is, is never asked here. */
export function MarkCard(props: MarkCardProps) {
  const { place, goTo } = props.acts;
  const draft = place.mark!;
  const set = (change: Partial<MarkDraft>) => goTo({ ...place, mark: { ...draft, ...change } });
  const photographs = photographsFor(props);
  return (
    <section className="card stack" aria-labelledby="mark-name">
      <div>
        <h2 id="mark-name">{t("yard.mark.title")}</h2>
        <p>{t("yard.mark.where")}</p>
      </div>
      {photographs.length === 0 && (
        <p className="yard-note yard-warn">
          {t(props.acts.walk.late === null ? "yard.mark.photoFirst" : "yard.sheet.noPhotograph")}
        </p>
      )}
      <Chips legend={t("yard.mark.what")}>
        {KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            className="chip"
            aria-pressed={draft.markKind === kind}
            onClick={() => set({ markKind: kind })}
          >
            {t(`yard.markKind.${kind}`)}
          </button>
        ))}
      </Chips>
      <Chips legend={t("yard.mark.size")}>
        {SIZES_MM.map((sizeMm) => (
          <button
            key={sizeMm}
            type="button"
            className="chip"
            aria-pressed={draft.sizeMm === sizeMm}
            onClick={() => set({ sizeMm })}
          >
            {sizeWords(sizeMm)}
          </button>
        ))}
      </Chips>
      <Nudge draft={draft} onMove={set} />
      <label className="field">
        <span className="field-label">{t("yard.mark.note")}</span>
        <input
          className="input"
          defaultValue={draft.note}
          maxLength={500}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
      </label>
      <Press onPress={() => goTo({ ...place, mark: null })}>{t("yard.mark.cancel")}</Press>
    </section>
  );
}

function Chips({ legend, children }: { readonly legend: string; readonly children: React.ReactNode }) {
  return (
    <fieldset className="chips">
      <legend>{legend}</legend>
      {children}
    </fieldset>
  );
}

/** Moves the mark without touching the drawing: for the keyboard, and for one exact step. */
function Nudge({
  draft,
  onMove,
}: {
  readonly draft: MarkDraft;
  readonly onMove: (change: Partial<MarkDraft>) => unknown;
}) {
  const move = (x: number, y: number) => {
    const within = (share: number) => Math.round(Math.min(1, Math.max(0, share)) * 1000) / 1000;
    return onMove({ xShare: within(draft.xShare + x), yShare: within(draft.yShare + y) });
  };
  const step = 0.03;
  return (
    <fieldset className="chips">
      <legend>{t("yard.mark.move")}</legend>
      <button type="button" className="chip" onClick={() => move(-step, 0)} aria-label={t("yard.mark.left")}>
        ←
      </button>
      <button type="button" className="chip" onClick={() => move(step, 0)} aria-label={t("yard.mark.right")}>
        →
      </button>
      <button type="button" className="chip" onClick={() => move(0, -step)} aria-label={t("yard.mark.up")}>
        ↑
      </button>
      <button type="button" className="chip" onClick={() => move(0, step)} aria-label={t("yard.mark.down")}>
        ↓
      </button>
    </fieldset>
  );
}
