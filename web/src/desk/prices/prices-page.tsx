import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { CountedCard } from "./counted-card.tsx";
import { HistoryCard } from "./history-card.tsx";
import { KeepCard } from "./keep-card.tsx";
import { KitCard } from "./kit-card.tsx";
import { ListFileCard } from "./list-file-card.tsx";
import { bodyOf, countChanges, draftNow, draftOf, type PriceDraft } from "./price-draft.ts";
import { RepairsCard } from "./repairs-card.tsx";
import "../hire/hire.css";
import "../terms/terms.css";
import "./prices.css";

type Prices = Schemas["FirmPrices"];

/** What a lost thing is worth and what a repair costs, kept from a day on as a new version of the hire terms. */
export default function PricesPage() {
  usePageTitle(t("firmPrices.title"));
  const found = useQuery({
    queryKey: ["firmPrices"],
    queryFn: () => take(client.GET("/api/terms/prices")),
  });
  return (
    <>
      <div className="page-head">
        <h1>{t("firmPrices.title")}</h1>
        <p className="quiet">{t("firmPrices.lead")}</p>
        <div className="page-acts">
          <Link href="/terms" className="link-row">
            {t("firmPrices.toRateCard")}
          </Link>
        </div>
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined &&
        (found.data.today === null ? <Empty>{t("firmPrices.noTerms")}</Empty> : <Lists now={found.data} />)}
    </>
  );
}

function usePrices(now: Prices) {
  const { today } = useSignedIn();
  const kept = draftNow(now, today);
  const draft = useGuardedDraft<PriceDraft>("prices", {
    value: kept,
    version: now.newest,
    ...(now.written === null ? {} : { newest: draftOf(now.written, now.written.validFrom) }),
  });
  const { value, basedOn } = draft;
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () => take(client.PUT("/api/terms/prices", { params: { query: { basedOn } }, body: bodyOf(value) })),
        () => queries.invalidateQueries({ queryKey: ["firmPrices"] }),
      ),
    onSuccess: (answer) => {
      draft.done();
      queries.setQueryData(["firmPrices"], answer);
      for (const kind of ["terms", "termsVersions", "firstSteps"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  return { kept, draft, save, changes: countChanges(value, kept) };
}

/** The day since which most lines have been as they are: said once, not on each of them. */
function usualSince({ kit, repairs }: Prices): string | null {
  const count = new Map<string, number>();
  for (const { since } of [...kit, ...repairs]) count.set(since.from, (count.get(since.from) ?? 0) + 1);
  return [...count].sort(([, a], [, b]) => b - a)[0]?.[0] ?? null;
}

function Lists({ now }: { readonly now: Prices }) {
  const mayWrite = useSignedIn().may.includes("terms.write");
  const { kept, draft, save, changes } = usePrices(now);
  const [asked, ask] = useState<string | null>(null);
  const { value } = draft;
  const change = (part: Partial<PriceDraft>) => draft.set({ ...value, ...part });
  const since = usualSince(now);
  const pieces = { now, kept, value, change, mayWrite, since };
  return (
    <div className="stack">
      {!mayWrite && <p className="quiet">{t("firmPrices.managerOnly")}</p>}
      {since !== null && <p>{t("firmPrices.sinceAll", { from: dateText(since, "full") })}</p>}
      <CountedCard {...pieces} onAsk={ask} />
      <div className="price-columns">
        <KitCard {...pieces} asked={asked} onAsked={() => ask(null)} />
        <RepairsCard {...pieces} />
      </div>
      <ListFileCard {...pieces} />
      {mayWrite && <KeepCard now={now} draft={draft} save={save} changes={changes} />}
      <HistoryCard changes={now.changes} />
      {mayWrite && changes > 0 && (
        <p className="sheet-foot" role="status">
          <strong>{t("firmPrices.notKept", { n: changes })}</strong>
          <a href="#keep-title" className="button">
            {t("firmPrices.toKeep")}
          </a>
        </p>
      )}
    </div>
  );
}
