import { icon } from "@setfair/drawing";
import { useEffect, useId, useMemo, useState } from "react";
import { makeJpeg } from "../../parts/make-jpeg.ts";
import { SvgView } from "../../parts/svg-view.tsx";
import { t } from "../../parts/words.ts";

export type Picture = Uint8Array<ArrayBuffer>;
const MOST = 3;

export interface PicturesFieldProps {
  readonly pictures: readonly Picture[];
  readonly onChange: (pictures: readonly Picture[]) => void;
}

/** Up to three pictures from the camera or from those taken before, seen before they are kept. */
export function PicturesField({ pictures, onChange }: PicturesFieldProps) {
  const id = useId();
  const [isWrong, setWrong] = useState(false);
  const take = async (input: HTMLInputElement) => {
    const [file] = [...(input.files ?? [])];
    input.value = "";
    if (file === undefined) return;
    try {
      const picture = await makeJpeg(file);
      setWrong(false);
      onChange([...pictures, picture].slice(0, MOST));
    } catch {
      setWrong(true);
    }
  };
  return (
    <div className="stack-tight">
      <p className="quiet" role="status">
        {t("hirer.missed.photos", { n: pictures.length })}
      </p>
      {pictures.length > 0 && (
        <ul className="own-pictures">
          {pictures.map((picture, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pictures are only taken away from the list or put at its end
            <li key={k}>
              <Preview picture={picture} label={t("hirer.missed.photoNumber", { k: k + 1 })} />
              <button
                type="button"
                className="button"
                onClick={() => onChange(pictures.filter((_, at) => at !== k))}
              >
                {t("hirer.missed.photoOff")}
              </button>
            </li>
          ))}
        </ul>
      )}
      {pictures.length < MOST && (
        <span className="guide-photo">
          <input
            id={id}
            className="visually-hidden"
            type="file"
            accept="image/*"
            onChange={(event) => void take(event.currentTarget)}
          />
          <label htmlFor={id} className="button">
            <SvgView node={icon("camera")} />
            {t(pictures.length === 0 ? "hirer.missed.photo" : "hirer.missed.photoMore")}
          </label>
        </span>
      )}
      {isWrong && (
        <p className="field-error" role="alert">
          {t("hirer.missed.notPicture")}
        </p>
      )}
    </div>
  );
}

function Preview({ picture, label }: { readonly picture: Picture; readonly label: string }) {
  const address = useMemo(() => URL.createObjectURL(new Blob([picture], { type: "image/jpeg" })), [picture]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return <img className="shot" src={address} alt={label} />;
}
