import { useState } from "react";
import { t } from "../../parts/words.ts";

export interface EvidencePhotosProps {
  readonly token: string;
  readonly out: readonly string[];
  readonly back: readonly string[];
}

/** How a place went out and how it came back, side by side; a touch shows a picture large. */
export function EvidencePhotos({ token, out, back }: EvidencePhotosProps) {
  if (out.length + back.length === 0) return null;
  return (
    <div className="out-and-back">
      <Side token={token} name={t("hirer.statement.out")} hashes={out} />
      <Side token={token} name={t("hirer.statement.back")} hashes={back} />
    </div>
  );
}

function Side({
  token,
  name,
  hashes,
}: {
  readonly token: string;
  readonly name: string;
  readonly hashes: readonly string[];
}) {
  return (
    <section aria-label={name}>
      <p className="field-label">{name}</p>
      {hashes.length === 0 && <p className="quiet">{t("hirer.statement.noPhoto")}</p>}
      <ul className="shots">
        {hashes.map((sha256, k) => (
          <li key={sha256}>
            <Shot
              token={token}
              sha256={sha256}
              label={t("hirer.statement.photo", { when: name, k: k + 1, of: hashes.length })}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A picture from the depot; with no signal it says so. */
export function Shot({
  token,
  sha256,
  label,
}: {
  readonly token: string;
  readonly sha256: string;
  readonly label: string;
}) {
  const [isGone, setGone] = useState(false);
  const address = `/api/guide/${encodeURIComponent(token)}/photos/${sha256}`;
  if (isGone) return <p className="quiet">{t("hirer.statement.photoGone")}</p>;
  return (
    <a href={`${address}?size=large`} target="_blank" rel="noreferrer">
      <img
        className="shot"
        src={`${address}?size=small`}
        alt={label}
        loading="lazy"
        onError={() => setGone(true)}
      />
    </a>
  );
}
