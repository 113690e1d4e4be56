import { useLiveQuery } from "dexie-react-hooks";
import type { ReactNode } from "react";
import type { YardJob } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { device } from "./device.ts";

interface WalkLoaderProps {
  readonly jobId: string;
  readonly children: (job: YardJob) => ReactNode;
}

/** Finds the job on this device. */
export function WalkLoader({ jobId, children }: WalkLoaderProps) {
  const job = useLiveQuery(async () => (await device().db.jobs.get(jobId))?.job ?? null, [jobId]);
  if (job === undefined) return <p className="state-box">{t("yard.loading")}</p>;
  if (job === null) {
    return (
      <ScrollMain className="yard-main stack">
        <h1>{t("yard.walk.notHere")}</h1>
        <a className="button" href="#/">
          {t("yard.backToList")}
        </a>
      </ScrollMain>
    );
  }
  return children(job);
}
