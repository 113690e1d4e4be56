import { useState } from "react";
import { t } from "../../../parts/words.ts";

interface PhotosProps {
  readonly hashes: readonly string[];
  /** what they are of, for who cannot see them */
  readonly label: string;
  readonly small?: boolean;
}

/** Photographs, each with its original one press away. */
export function Photos({ hashes, label, small = false }: PhotosProps) {
  if (hashes.length === 0) return <p className="quiet">{t("back.noPhotograph")}</p>;
  return (
    <span className={small ? "photos photos-small" : "photos"}>
      {hashes.map((hash, k) => (
        <Photo
          key={hash}
          hash={hash}
          small={small}
          alt={t("settling.photoOf", { label, n: k + 1, of: hashes.length })}
        />
      ))}
    </span>
  );
}

interface PhotoProps {
  readonly hash: string;
  readonly alt: string;
  readonly small: boolean;
}

/** One photograph, or why it cannot be shown: it was removed, or has not come yet. */
function Photo({ hash, alt, small }: PhotoProps) {
  const [why, setWhy] = useState<string | null>(null);
  const address = `/api/photos/${hash}`;
  const shown = `${address}?size=${small ? "small" : "large"}`;
  if (why !== null) return <small className="photo-gone quiet">{`${alt}: ${why}`}</small>;
  return (
    <a href={`${address}?size=original`} target="_blank" rel="noreferrer">
      <img
        src={shown}
        alt={alt}
        loading="lazy"
        onError={() => {
          void whyNot(shown).then(setWhy);
        }}
      />
    </a>
  );
}

/** What the server says of a photograph that it does not give. */
async function whyNot(address: string): Promise<string> {
  try {
    const { error } = (await (await fetch(address)).json()) as {
      error?: { code?: string; problems?: { expected: string }[] };
    };
    const [problem] = error?.problems ?? [];
    if (error?.code === "photographRemoved" && problem !== undefined) return problem.expected;
  } catch {
    // no signal, or an answer that is no error of ours: it is not here, and that is said
  }
  return t("photograph.notHere");
}
