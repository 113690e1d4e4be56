import { useState } from "react";
import { Link } from "wouter";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FindingsList, FindingText, GlassPill, LinkButton } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useSignedIn } from "../../session.ts";
import { HireStockCard } from "../../stock/hire-stock-card.tsx";
import { placeOfHire } from "../../where.ts";
import { AdditionsCard } from "../additions-card.tsx";
import { QuestionsCard } from "../back/questions-card.tsx";
import { PapersCard } from "../papers-card.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { WalkCard } from "../walk-card.tsx";
import { DefectsCard } from "./defects-card.tsx";
import { HirerLinkCard } from "./hirer-link-card.tsx";
import { type PaperPurpose, paperText } from "./paper-text.ts";
import { SignDialog } from "./sign-dialog.tsx";

const PAPERS: readonly PaperPurpose[] = ["agreement", "liability"];

/** The handover: what is signed, the walk-round, and the keys. */
export default function HandoverPart({ page }: PartProps) {
  const isDesk = useSignedIn().may.includes("hire.handOver");
  return (
    <>
      {isDesk && <Papers page={page} />}
      <DefectsCard page={page} />
      <HireStockCard hireId={page.hire.id} stage={page.hire.stage} />
      <WalkCard title={t("handover.walkOut")} walk={page.records.out} />
      <QuestionsCard page={page} />
      {isDesk && <Keys page={page} />}
      <AdditionsCard hireId={page.hire.id} />
      {isDesk && <HirerLinkCard page={page} />}
      <PapersCard hireId={page.hire.id} papers={["agreement", "condition", "countries", "walkOut"]} />
    </>
  );
}

function Papers({ page }: PartProps) {
  const { depot } = useSignedIn();
  const [open, setOpen] = useState<PaperPurpose | null>(null);
  const signedFor = (what: string) => page.signatures.find((signature) => signature.what === what);
  return (
    <section className="card" aria-labelledby="papers-title">
      <h2 id="papers-title">{t("handover.papers")}</h2>
      {page.customer.address === undefined &&
        page.customer.name !== "" &&
        signedFor("liability") === undefined && (
          <p className="row">
            {t("hirerCard.noAddressYet")}{" "}
            <Link href={`${placeOfHire(page.hire.id)}/people`}>{t("hirerCard.enterAddress")}</Link>
          </p>
        )}
      <ul>
        {PAPERS.map((purpose) => {
          const done = signedFor(purpose);
          return (
            <li key={purpose} className="sign-line row spread">
              <span>
                <strong>{t(`paper.${purpose}.title`)}</strong>
                <span className="quiet">
                  {" "}
                  {done === undefined
                    ? t("handover.notSigned")
                    : t("handover.signed", { by: done.by, at: dateText(done.at, "dayTime", depot.timeZone) })}
                </span>
              </span>
              {done === undefined && <Button onPress={() => setOpen(purpose)}>{t("handover.sign")}</Button>}
            </li>
          );
        })}
        <li className="sign-line row spread">
          <span>
            <strong>{t("handover.briefing")}</strong>
            <span className="quiet">
              {" "}
              {signedFor("briefing") === undefined
                ? t("handover.notSigned")
                : t("handover.signed", {
                    by: signedFor("briefing")?.by,
                    at: dateText(signedFor("briefing")?.at ?? page.hire.from, "dayTime", depot.timeZone),
                  })}
            </span>
          </span>
          <LinkButton href={`${placeOfHire(page.hire.id)}/briefing`}>{t("handover.openBriefing")}</LinkButton>
        </li>
      </ul>
      {open !== null && (
        <SignDialog
          title={t(`paper.${open}.title`)}
          signer={page.customer.name}
          signing={{
            hireId: page.hire.id,
            vehicleId: page.hire.vehicle?.id ?? null,
            purpose: open,
            shown: paperText(open, page),
            items: [],
          }}
          onClose={() => setOpen(null)}
        />
      )}
    </section>
  );
}

function Keys({ page }: PartProps) {
  const { id, stage } = page.hire;
  const hand = useHireAct(() => take(client.POST("/api/hires/{id}/keys", { params: { path: { id } } })));
  if (stage !== "booked" || page.glass === null) return null;
  return (
    <section className="card stack" aria-labelledby="keys-title">
      <div className="row spread">
        <h2 id="keys-title">
          {t("hire.mayTheKeysGo")} <GlassPill state={page.glass.state} isSoFar={page.hire.gatesLater > 0} />
        </h2>
        <Button look="main" onPress={() => hand.mutate()} isPending={hand.isPending}>
          {t("handover.keys")}
        </Button>
      </div>
      {page.conditions.length > 0 && (
        <div>
          <h3>{t("hire.conditions")}</h3>
          <ol className="conditions-list">
            {page.conditions.map((finding) => (
              <li key={`${finding.code}.${finding.about ?? ""}`}>
                <FindingText finding={finding} />
              </li>
            ))}
          </ol>
        </div>
      )}
      {hand.error !== null && <FailureNote failure={hand.error} />}
      {hand.error === null && page.glass.because.length > 0 && page.glass.state !== "ready" && (
        <FindingsList
          findings={page.glass.gates
            .filter(
              ({ isDue, state }) =>
                isDue && (state === "refused" || state === "referred" || state === "notCheckedYet"),
            )
            .flatMap(({ findings }) =>
              findings.filter(({ override }) => override === null).map(({ finding }) => finding),
            )}
        />
      )}
      <p className="quiet">{t("handover.checkedOnly")}</p>
    </section>
  );
}
