import type { YardJob } from "../offline/database.ts";
import { t } from "../parts/words.ts";
import { KeptPicture } from "./kept-picture.tsx";

/** How it left beside how it is now. */
export function Pictures({
  job,
  before,
  now,
}: {
  readonly job: YardJob;
  readonly before: readonly string[];
  readonly now: readonly string[];
}) {
  if (before.length + now.length === 0) return null;
  return (
    <div className="pictures">
      {job.walk === "back" &&
        before
          .slice(-2)
          .map((sha256) => <KeptPicture key={`out ${sha256}`} sha256={sha256} words={t("yard.photo.out")} />)}
      {now.slice(-3).map((sha256) => (
        <KeptPicture key={sha256} sha256={sha256} words={t("yard.photo.now")} />
      ))}
    </div>
  );
}
