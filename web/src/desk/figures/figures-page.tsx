import { addDays } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Loading, NumberField } from "../../parts/index.ts";
import { dateText, figureText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeepRow } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { DaysField } from "./days-field.tsx";
import { MessagesCard } from "./messages-card.tsx";
import type { Kept, PieceProps } from "./piece-props.ts";
import "../hire/hire.css";
import "./figures.css";

const MOST_LINK_DAYS = 60;
const MOST_KM = 1000;
const WEEK = 7;

/** Days of messages, life of a hirer's link, and how far a hire goes in a day. */
export default function FiguresPage() {
  usePageTitle(t("figures.title"));
  const found = useQuery({
    queryKey: ["depotFigures"],
    queryFn: () => take(client.GET("/api/depot/figures")),
  });
  return (
    <>
      <div className="page-head">
        <h1>{t("figures.title")}</h1>
        <p className="quiet">{t("figures.lead")}</p>
        <div className="page-acts">
          <Link href="/depot" className="link-row">
            {t("figures.toDepot")}
          </Link>
          <Link href="/depot/times" className="link-row">
            {t("figures.toTimes")}
          </Link>
        </div>
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined && <FiguresForm kept={found.data} />}
    </>
  );
}

function FiguresForm({ kept }: { readonly kept: Kept }) {
  const mayWrite = useSignedIn().may.includes("terms.write");
  const draft = useGuardedDraft("depotFigures", { value: kept.figures, version: kept.version });
  const { value, basedOn } = draft;
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () => take(client.PUT("/api/depot/figures", { params: { query: { basedOn } }, body: value })),
        () => queries.invalidateQueries({ queryKey: ["depotFigures"] }),
      ),
    onSuccess: (answer) => {
      draft.done();
      queries.setQueryData(["depotFigures"], answer);
      for (const kind of ["hire", "today", "messages", "messagePreview"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  const pieces: PieceProps = {
    value,
    kept,
    change: (part) => draft.set({ ...value, ...part }),
    failure: save.error,
    mayWrite,
  };
  return (
    <div className="stack">
      <MessagesCard {...pieces} />
      <div className="figures-pair">
        <LinkCard {...pieces} />
        <DistanceCard {...pieces} />
      </div>
      {mayWrite ? (
        <section className="card stack-tight" aria-label={t("figures.keep")}>
          <KeptMeanwhile
            draft={draft}
            failure={save.error}
            onSettled={save.reset}
            shown={["messageDays.dayBefore"]}
          />
          <KeepRow label={t("figures.keep")} save={save} draft={draft} />
        </section>
      ) : (
        <p className="quiet">{t("figures.managerOnly")}</p>
      )}
    </div>
  );
}

function LinkCard({ value, kept, change, failure, mayWrite }: PieceProps) {
  const { next } = kept;
  return (
    <section className="card stack" aria-labelledby="link-title">
      <h2 id="link-title">{t("figures.link")}</h2>
      <p className="quiet">{t("figures.linkNote")}</p>
      <div className="sheet-fields">
        <DaysField
          label={t("figures.linkDays")}
          value={value.linkDays}
          usual={kept.usual.linkDays}
          min={1}
          max={MOST_LINK_DAYS}
          mayWrite={mayWrite}
          error={problemAt(failure, "linkDays")}
          onChange={(linkDays) => change({ linkDays })}
        >
          {next !== null && (
            <p className="quiet">
              {t("figures.linkUntil", {
                reference: next.reference,
                on: dateText(addDays(next.to.slice(0, 10), value.linkDays), "full"),
              })}
            </p>
          )}
        </DaysField>
      </div>
    </section>
  );
}

function DistanceCard({ value, kept, change, failure, mayWrite }: PieceProps) {
  const km = (distance: number) => figureText({ value: distance, unit: "km" });
  const usual = value.kmADay === kept.usual.kmADay ? "same" : km(kept.usual.kmADay);
  return (
    <section className="card stack" aria-labelledby="distance-title">
      <h2 id="distance-title">{t("figures.distance")}</h2>
      <p className="quiet">{t("figures.distanceNote")}</p>
      <div className="sheet-fields">
        <div className="stack-tight">
          {mayWrite ? (
            <NumberField
              label={t("figures.kmADay")}
              unit="km"
              note={t("figures.range", { min: km(1), max: km(MOST_KM), usual })}
              value={value.kmADay}
              min={1}
              max={MOST_KM}
              onChange={(n) => change({ kmADay: n ?? 1 })}
              error={problemAt(failure, "kmADay")}
            />
          ) : (
            <p>{`${t("figures.kmADay")}: ${km(value.kmADay)}`}</p>
          )}
          <p className="quiet">{t("figures.kmFollows", { km: km(Math.round(value.kmADay * WEEK)) })}</p>
        </div>
      </div>
    </section>
  );
}
