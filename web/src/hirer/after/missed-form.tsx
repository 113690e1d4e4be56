import type { MarkKind, VehicleDescription, View } from "@setfair/engine";
import { type FormEvent, useId, useState } from "react";
import { t } from "../../parts/words.ts";
import { phone } from "../phone.ts";
import { type Picture, PicturesField } from "./pictures-field.tsx";
import { type Place, Where } from "./where.tsx";

const KINDS: readonly MarkKind[] = ["scratch", "dent", "tear", "stain", "crack", "missing"];
const LONGEST = 500;

export interface MissedFormProps {
  readonly token: string;
  readonly hireId: string;
  readonly vehicleId: string;
  readonly vehicle: VehicleDescription;
  readonly name: string;
}

interface Draft {
  readonly view: View;
  readonly place: Place | null;
  readonly kind: MarkKind | null;
  readonly words: string;
  readonly pictures: readonly Picture[];
}
const EMPTY: Draft = { view: "nearside", place: null, kind: null, words: "", pictures: [] };

type Field = "place" | "kind" | "words" | "pictures";
type Errors = Partial<Record<Field, string>>;

/** What is still missing, by field, in words. */
const missingIn = ({ place, kind, words, pictures }: Draft): Errors => ({
  ...(place === null ? { place: t("hirer.missed.needPart") } : {}),
  ...(kind === null ? { kind: t("hirer.missed.needKind") } : {}),
  ...(words.trim() === "" ? { words: t("hirer.missed.needWords") } : {}),
  ...(pictures.length === 0 ? { pictures: t("hirer.missed.needPhoto") } : {}),
});

async function keepMark(props: MissedFormProps, draft: Draft, place: Place): Promise<void> {
  const { token, hireId, vehicleId } = props;
  const shared = { about: place.part, view: place.view, direction: "out", by: "hirer" };
  const store = await phone();
  await store.keepEvidence({
    pictures: draft.pictures,
    shows: shared,
    record: {
      kind: "mark",
      refs: { hireId, vehicleId },
      chain: `${hireId}.missed`,
      content: {
        ...shared,
        part: place.part,
        xShare: place.xShare,
        yShare: place.yShare,
        markKind: draft.kind ?? "scratch",
        note: draft.words.trim(),
      },
      via: { token },
    },
  });
}

/** Part, kind, words and a photograph; kept on this phone at once and sent when there is signal. */
export function MissedForm(props: MissedFormProps) {
  const id = useId();
  const [draft, setDraft] = useState(EMPTY);
  const [wasTried, setTried] = useState(false);
  const errors = wasTried ? missingIn(draft) : {};
  const [isFull, setFull] = useState(false);
  const [isBusy, setBusy] = useState(false);
  const set = (change: Partial<Draft>) => setDraft((before) => ({ ...before, ...change }));
  const send = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (Object.keys(missingIn(draft)).length > 0 || draft.place === null) return;
    setBusy(true);
    try {
      await keepMark(props, draft, draft.place);
      setDraft(EMPTY);
      setTried(false);
      setFull(false);
      document.querySelector("#added")?.scrollIntoView({ block: "nearest" });
    } catch {
      setFull(true);
    } finally {
      setBusy(false);
    }
  };
  return (
    <form className="card stack" onSubmit={send} noValidate>
      <Where
        vehicle={props.vehicle}
        name={props.name}
        view={draft.view}
        place={draft.place}
        error={errors.place ?? null}
        onView={(view) => set({ view, place: null })}
        onPlace={(place) => set({ place })}
      />
      <fieldset className="post-choices" aria-describedby={`${id}-kind`}>
        <legend>{t("hirer.missed.kind")}</legend>
        {KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            className="choice"
            aria-pressed={draft.kind === kind}
            onClick={() => set({ kind })}
          >
            {t(`hirer.missed.kind.${kind}`)}
          </button>
        ))}
      </fieldset>
      <p id={`${id}-kind`} className="field-error">
        {errors.kind}
      </p>
      <label className="field">
        <span className="field-label">{t("hirer.missed.words")}</span>
        <textarea
          className="input"
          rows={3}
          maxLength={LONGEST}
          value={draft.words}
          aria-invalid={errors.words !== undefined}
          aria-describedby={`${id}-words`}
          onChange={(event) => set({ words: event.currentTarget.value })}
        />
      </label>
      <p id={`${id}-words`} className="field-error">
        {errors.words}
      </p>
      <PicturesField pictures={draft.pictures} onChange={(pictures) => set({ pictures })} />
      <p className="field-error" role="alert">
        {errors.pictures ?? (isFull ? t("hirer.missed.notKept") : Object.values(errors)[0])}
      </p>
      <button type="submit" className="button button-main" disabled={isBusy}>
        {t("hirer.missed.send")}
      </button>
    </form>
  );
}
