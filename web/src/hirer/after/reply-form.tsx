import { type FormEvent, useId, useState } from "react";
import { t } from "../../parts/words.ts";
import { type Picture, PicturesField } from "./pictures-field.tsx";

const LONGEST = 1000;

export interface ReplyFormProps {
  /** the line that is disputed */
  readonly about: string;
  readonly onSend: (text: string, pictures: readonly Picture[]) => Promise<void>;
  readonly onDone: () => void;
}

/** Why a line is disputed, in words and, if wished, pictures; kept on this phone where there is no signal. */
export function ReplyForm({ about, onSend, onDone }: ReplyFormProps) {
  const id = useId();
  const [text, setText] = useState("");
  const [pictures, setPictures] = useState<readonly Picture[]>([]);
  const [error, setError] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === "") return setError(t("hirer.statement.needWords"));
    setBusy(true);
    try {
      await onSend(text.trim(), pictures);
      onDone();
    } catch {
      setError(t("hirer.missed.notKept"));
    } finally {
      setBusy(false);
    }
  };
  return (
    <form className="stack" onSubmit={send} noValidate aria-label={about}>
      <label className="field">
        <span className="field-label">{t("hirer.statement.disputeWhy")}</span>
        <textarea
          className="input"
          rows={4}
          maxLength={LONGEST}
          value={text}
          aria-invalid={error !== null}
          aria-describedby={`${id}-error`}
          onChange={(event) => {
            setText(event.currentTarget.value);
            setError(null);
          }}
        />
      </label>
      <PicturesField pictures={pictures} onChange={setPictures} />
      <p id={`${id}-error`} className="field-error" role="alert">
        {error}
      </p>
      <div className="two-calls">
        <button type="submit" className="button button-main" disabled={isBusy}>
          {t("hirer.statement.send")}
        </button>
        <button type="button" className="button" onClick={onDone}>
          {t("hirer.statement.cancel")}
        </button>
      </div>
    </form>
  );
}
