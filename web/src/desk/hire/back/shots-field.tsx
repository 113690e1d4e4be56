import { sha256Hex } from "@setfair/records";
import { useId, useState } from "react";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { makeJpeg } from "../../../parts/make-jpeg.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { Photos } from "./photos.tsx";

interface ShotsFieldProps {
  readonly hireId: string;
  readonly label: string;
  readonly note?: string | undefined;
  readonly error?: string | undefined;
  readonly value: readonly string[];
  readonly onChange: (hashes: readonly string[]) => void;
}

/** Keeps a picture under its own hash, as a tablet does; gives the hash. */
async function keepPicture(hireId: string, file: Blob): Promise<string> {
  const bytes = await makeJpeg(file);
  const sha256 = sha256Hex(bytes);
  const sent = fetch(`/api/photos/${sha256}?hire=${encodeURIComponent(hireId)}`, {
    method: "PUT",
    credentials: "same-origin",
    headers: { "content-type": "image/jpeg" },
    body: new Blob([bytes], { type: "image/jpeg" }),
  });
  await take(
    sent.then(async (response) => {
      const body: unknown = await response.json();
      return response.ok ? { data: body, response } : { error: body, response };
    }),
  );
  return sha256;
}

/** Photographs that show something: chosen from this computer or taken with its camera, sent at once. */
export function ShotsField({ hireId, label, note, error, value, onChange }: ShotsFieldProps) {
  const id = useId();
  const [working, setWorking] = useState(false);
  const [failure, setFailure] = useState<unknown>(null);
  const add = async (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = "";
    setWorking(true);
    setFailure(null);
    try {
      const kept = [...value];
      for (const file of files) kept.push(await keepPicture(hireId, file));
      onChange([...new Set(kept)]);
    } catch (reason) {
      setFailure(reason);
    }
    setWorking(false);
  };
  return (
    <div className="field ask-wide">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="input"
        type="file"
        accept="image/*"
        multiple
        aria-describedby={`${id}-note`}
        onChange={(event) => void add(event.currentTarget)}
      />
      <span id={`${id}-note`} className={error === undefined ? "field-note" : "field-error"}>
        {error ?? (working ? t("settling.sendingPhoto") : (note ?? t("settling.photosNote")))}
      </span>
      {value.length > 0 && (
        <div className="row">
          <Photos hashes={value} label={label} small />
          <Button look="quiet" onPress={() => onChange([])}>
            {t("settling.noPhotos")}
          </Button>
        </div>
      )}
      <FailureNote failure={failure} />
    </div>
  );
}
