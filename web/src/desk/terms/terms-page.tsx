import { useMutation, useQuery } from "@tanstack/react-query";
import { useDeferredValue } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { DateField, Empty, FindingsList, findingWords, Loading, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeepRow } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { ChargeFields } from "./charge-fields.tsx";
import { ClassFields } from "./class-fields.tsx";
import { SeasonFields } from "./season-fields.tsx";
import { StepFields } from "./step-fields.tsx";
import { TariffFields } from "./tariff-fields.tsx";
import { type TermsDraft, versionName } from "./terms-draft.ts";
import { YearPreview } from "./year-preview.tsx";
import "../hire/hire.css";
import "../hire/abroad/abroad.css";
import "./terms.css";

/** The rate card: seasons, steps and charges, kept as a new version from a day on. */
export default function TermsPage() {
  usePageTitle(t("rates.title"));
  const terms = useQuery({ queryKey: ["terms"], queryFn: () => take(client.GET("/api/terms")) });
  return (
    <>
      <div className="page-head">
        <h1>{t("rates.title")}</h1>
        <p className="quiet">{t("rates.oldStay")}</p>
        <div className="page-acts">
          <Link href="/terms/prices" className="link-row">
            {t("rateMore.toPrices")}
          </Link>
        </div>
      </div>
      {terms.isPending && <Loading />}
      <FailureNote failure={terms.error} onAgain={() => void terms.refetch()} />
      {terms.data !== undefined &&
        (terms.data.hire === null ? (
          <Empty>{t("rates.noTerms")}</Empty>
        ) : (
          <RateCard now={terms.data.hire.terms} newest={terms.data.newest.hire ?? terms.data.hire} />
        ))}
    </>
  );
}

/** The findings and the year of a draft; asked for again when it changed. */
function useCheck(draft: TermsDraft, from: string) {
  const asked = useDeferredValue(draft);
  return useQuery({
    queryKey: ["termsCheck", asked, from],
    queryFn: () => take(client.POST("/api/terms/check", { body: { terms: asked, from } })),
    placeholderData: (before) => before,
    retry: false,
  });
}

interface RateCardProps {
  readonly now: TermsDraft;
  /** the version written last, whatever its date */
  readonly newest: { readonly versionId: string; readonly terms: TermsDraft };
}

function RateCard({ now, newest }: RateCardProps) {
  const { today, may } = useSignedIn();
  const mayWrite = may.includes("terms.write");
  const draft = useGuardedDraft<TermsDraft>("terms", {
    value: { ...now, validFrom: today, id: versionName(today) },
    version: newest.versionId,
    newest: newest.terms,
  });
  const { value, basedOn } = draft;
  const change = (part: Partial<TermsDraft>) => draft.set({ ...value, ...part });
  const check = useCheck(value, `${value.validFrom.slice(0, 4) || today.slice(0, 4)}-01-01`);
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/terms", {
              params: { query: { basedOn } },
              body: { hire: value, pricesStay: true },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["terms"] }),
      ),
    onSuccess: (answer) => {
      draft.done();
      queries.setQueryData(["terms"], answer);
      for (const kind of ["termsVersions", "availability"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  const refused = check.data?.findings.some(({ severity }) => severity === "refuse") ?? false;
  const pieces = { value, change, failure: save.error };
  const known = check.data?.classes ?? Object.keys(now.seasons[0]?.nightPence ?? {});
  return (
    <div className="stack">
      <section className="card stack-tight" aria-labelledby="check-title">
        <h2 id="check-title">{t("rates.check")}</h2>
        <div aria-live="polite">{check.data !== undefined && <Checked findings={check.data.findings} />}</div>
        <FailureNote failure={check.error} />
      </section>
      {check.data !== undefined && <YearPreview preview={check.data} />}
      <Versions />
      {mayWrite ? (
        <>
          <ClassFields {...pieces} classes={known} />
          <SeasonFields {...pieces} classes={known} />
          <StepFields {...pieces} />
          <ChargeFields {...pieces} />
          <TariffFields {...pieces} />
          <section className="card stack-tight" aria-labelledby="keep-title">
            <h2 id="keep-title">{t("rates.keepTitle")}</h2>
            <DateField
              label={t("rates.validFrom")}
              note={t("rates.validFromNote")}
              value={value.validFrom}
              onChange={(validFrom) => change({ validFrom, id: versionName(validFrom) })}
            />
            <p className="quiet">{t("rates.tariffStays")}</p>
            {refused && <p className="strip-say-trouble">{t("rates.mendFirst")}</p>}
            <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} ownFields={["id"]} />
            <KeepRow
              label={t("rates.keep")}
              save={save}
              draft={draft}
              isUnfit={refused || value.validFrom === ""}
            />
          </section>
        </>
      ) : (
        <p className="quiet">{t("rates.managerOnly")}</p>
      )}
    </div>
  );
}

type Findings = Schemas["TermsPreview"]["findings"];

/** What must be put right stands open; where seasons meet, and which wins, is folded away. */
function Checked({ findings }: { readonly findings: Findings }) {
  const overlaps = findings.filter(({ code }) => code === "terms.overlap");
  const others = findings.filter(({ code }) => code !== "terms.overlap");
  return (
    <>
      {findings.every(({ severity }) => severity !== "refuse") && <p>{t("rates.everyDay")}</p>}
      {others.length > 0 && (
        <FindingsList findings={others.map((each, k) => ({ ...each, about: `${each.about ?? ""}${k}` }))} />
      )}
      {overlaps.length > 0 && (
        <details>
          <summary className="fold">{t("rates.overlaps", { n: overlaps.length })}</summary>
          <ul>
            {overlaps.map((each) => (
              <li key={findingWords(each)}>{findingWords(each)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function Versions() {
  const found = useQuery({
    queryKey: ["termsVersions"],
    queryFn: () => take(client.GET("/api/terms/versions")),
  });
  if (found.data === undefined) return <FailureNote failure={found.error} />;
  return (
    <section className="card stack-tight" aria-labelledby="versions-title">
      <h2 id="versions-title">{t("rates.versions")}</h2>
      <ul>
        {found.data.versions.map(({ versionId, termsId, validFrom, writtenAt, when }) => (
          <li key={versionId} className="row">
            <PlainPill>{t("rates.versionWhen", { when })}</PlainPill>
            <span>{t("rates.version", { from: dateText(validFrom, "full"), name: termsId })}</span>
            <span className="quiet">{t("rates.written", { at: dateText(writtenAt, "full") })}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
