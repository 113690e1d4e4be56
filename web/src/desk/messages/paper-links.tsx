import type { Schemas } from "../../api/client.ts";
import { t } from "../../parts/words.ts";

interface PaperLinksProps {
  readonly hireId: string;
  readonly papers: Schemas["Message"]["attachments"];
}

/** The papers that go with a message, each to be opened. */
export function PaperLinks({ hireId, papers }: PaperLinksProps) {
  if (papers.length === 0) return <p className="quiet">{t("messages.noAttachments")}</p>;
  return (
    <div className="row">
      <span className="quiet">{t("messages.attachments")}</span>
      {papers.map((paper) => (
        <a
          key={paper}
          href={`/api/hires/${encodeURIComponent(hireId)}/papers/${paper}`}
          target="_blank"
          rel="noreferrer"
          className="button"
        >
          {t("message.paper", { paper })}
        </a>
      ))}
    </div>
  );
}
