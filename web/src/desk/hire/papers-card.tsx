import { t } from "../../parts/words.ts";
import { useSignedIn } from "../session.ts";

export type PaperName =
  | "quote"
  | "agreement"
  | "countries"
  | "receipt"
  | "statement"
  | "walkOut"
  | "walkBack"
  | "condition"
  | "dispute"
  | "lostProperty";

interface PapersCardProps {
  readonly hireId: string;
  readonly papers: readonly PaperName[];
  /** with everything for somebody who was not there, as one file */
  readonly withPack?: boolean;
}

/** Papers of the hire as PDFs, each made at the moment it is opened; those that this person may open. */
export function PapersCard({ hireId, papers, withPack = false }: PapersCardProps) {
  const { may, papers: open } = useSignedIn();
  const maySettle = may.includes("hire.settle");
  const offered = papers.filter((paper) => open.includes(paper));
  if (offered.length === 0) return null;
  return (
    <section className="card stack-tight" aria-label={t("papers.card")}>
      <h2>{t("papers.card")}</h2>
      <p className="row">
        {offered.map((paper) => (
          <a
            key={paper}
            className="button"
            href={`/api/hires/${encodeURIComponent(hireId)}/papers/${paper}`}
            target="_blank"
            rel="noreferrer"
          >
            {t("papers.open", { paper })}
          </a>
        ))}
      </p>
      <p className="quiet">{t("papers.opensPdf")}</p>
      {withPack && maySettle && (
        <>
          <p className="row">
            <a className="button" href={`/api/hires/${encodeURIComponent(hireId)}/dispute-pack`} download>
              {t("proof.pack.zip")}
            </a>
          </p>
          <p className="quiet">{t("proof.pack.files")}</p>
        </>
      )}
    </section>
  );
}
