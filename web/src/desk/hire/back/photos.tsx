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
        <a key={hash} href={`/api/photos/${hash}?size=original`} target="_blank" rel="noreferrer">
          <img
            src={`/api/photos/${hash}?size=${small ? "small" : "large"}`}
            alt={t("settling.photoOf", { label, n: k + 1, of: hashes.length })}
            loading="lazy"
          />
        </a>
      ))}
    </span>
  );
}
