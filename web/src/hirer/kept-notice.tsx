import type { Guide } from "../offline/database.ts";
import { t } from "../parts/words.ts";
import type { HirerGuide } from "./use-guide.ts";

export interface KeptNoticeProps {
  readonly keeping: HirerGuide["keeping"];
  readonly guide: Pick<Guide, "depot" | "vehicle">;
  /** a page over a connection that browsers do not trust cannot work with no signal */
  readonly isSecure: boolean;
}

/** Says plainly that this phone could not keep the guide, and what that means; nothing where it has. */
export function KeptNotice({ keeping, guide, isSecure }: KeptNoticeProps) {
  if (isSecure && keeping !== "not") return null;
  const { telephone } = guide.depot;
  return (
    <section className="card stack-tight not-kept" role="status" aria-labelledby="not-kept">
      <h2 id="not-kept">{t("hirer.notKept.title")}</h2>
      <p>{t("hirer.notKept.means", { telephone, registration: guide.vehicle.registration })}</p>
      <p>{t(isSecure ? "hirer.notKept.mend" : "hirer.notKept.insecure")}</p>
    </section>
  );
}
