import { useSyncExternalStore } from "react";
import { t } from "../parts/words.ts";
import { JobList } from "./job-list.tsx";
import { OutboxLine } from "./outbox-line.tsx";
import { OutboxPage } from "./outbox-page.tsx";
import { SheetPage } from "./sheet-page.tsx";
import { WalkLoader } from "./walk-loader.tsx";
import { WalkPage } from "./walk-page.tsx";

const useHash = (): string =>
  useSyncExternalStore(
    (listener) => {
      addEventListener("hashchange", listener);
      return () => removeEventListener("hashchange", listener);
    },
    () => location.hash,
  );

/** The yard: the list of the day, one walk-round, or what waits to be sent. The address after # says which. */
export function YardApp() {
  const hash = useHash();
  const jobId = /^#\/walk\/(.+)$/.exec(hash)?.[1];
  if (jobId !== undefined)
    return (
      <WalkLoader key={jobId} jobId={decodeURIComponent(jobId)}>
        {(job) => <WalkPage job={job} />}
      </WalkLoader>
    );
  const sheetOf = /^#\/sheet\/(.+)$/.exec(hash)?.[1];
  if (sheetOf !== undefined) {
    const job = decodeURIComponent(sheetOf);
    return (
      <WalkLoader key={`sheet ${job}`} jobId={job}>
        {(found) => <SheetPage job={found} />}
      </WalkLoader>
    );
  }
  return (
    <>
      <header className="yard-bar">
        <a href="#/" className="yard-bar-name">
          {t("yard.name")}
        </a>
        <OutboxLine />
      </header>
      {hash === "#/outbox" ? <OutboxPage /> : <JobList />}
    </>
  );
}
