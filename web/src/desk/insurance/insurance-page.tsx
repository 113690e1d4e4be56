import { useMutation, useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Empty, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { type Kept, sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { firstPolicy } from "./first-policy.ts";
import { type Policy, PolicyForm } from "./policy-form.tsx";
import { PreviewTable } from "./preview-table.tsx";
import "../hire/abroad/abroad.css";
import "../hires/hires.css";
import "./insurance.css";

/** The insurer's criteria: as they stand, a new version from a day, and whom of the booked drivers it would touch. */
export default function InsurancePage() {
  usePageTitle(t("insurance.title"));
  const { may, today, depot } = useSignedIn();
  const terms = useQuery({ queryKey: ["terms"], queryFn: () => take(client.GET("/api/terms")) });
  if (terms.isPending) return <Loading />;
  if (terms.isError) return <FailureNote failure={terms.error} onAgain={() => void terms.refetch()} />;
  const { insurance } = terms.data;
  const newest = terms.data.newest.insurance;
  const mayBegin = may.includes("terms.write");
  return (
    <>
      <div className="page-head">
        <h1>{t("insurance.title")}</h1>
        <p className="quiet">{t("insurance.lead")}</p>
      </div>
      {insurance === null ? (
        <>
          <Empty>{t(mayBegin ? "insurance.begin" : "insurance.none")}</Empty>
          {mayBegin && (
            <Criteria
              kept={{
                value: firstPolicy(today, depot.place.country),
                version: newest?.versionId ?? "none",
                ...(newest === null ? {} : { newest: newest.policy }),
              }}
            />
          )}
        </>
      ) : (
        <Criteria
          kept={{
            value: insurance.policy,
            version: newest?.versionId ?? insurance.versionId,
            newest: newest?.policy ?? insurance.policy,
          }}
        />
      )}
    </>
  );
}

function Criteria({ kept }: { readonly kept: Kept<Policy> }) {
  const { user } = useSignedIn();
  const draft = useGuardedDraft<Policy>("insurance", kept);
  const { basedOn } = draft;
  const policy = draft.value;
  const look = useMutation({
    mutationFn: () => take(client.POST("/api/insurance/preview", { body: { policy } })),
  });
  const keep = useMutation({
    mutationFn: () =>
      sendOrRead(
        () => take(client.PUT("/api/terms", { params: { query: { basedOn } }, body: { insurance: policy } })),
        () => queries.invalidateQueries({ queryKey: ["terms"] }),
      ),
    onSuccess: () => {
      draft.done();
      for (const kind of ["terms", "hire", "today", "hires", "firstSteps"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  const isManager = user.role === "manager";
  return (
    <section className="card sheet" aria-label={t("insurance.title")}>
      <PolicyForm policy={policy} set={draft.set} error={keep.error ?? look.error} />
      <KeptMeanwhile draft={draft} failure={keep.error ?? look.error} onSettled={keep.reset} />
      {!isManager && <p className="quiet">{t("rules.managerOnly")}</p>}
      {isManager && (
        <div className="row">
          <Button onPress={() => look.mutate()} isPending={look.isPending}>
            {t("insurance.look")}
          </Button>
          <Button
            look="main"
            onPress={() => keep.mutate()}
            isPending={keep.isPending}
            isDisabled={!draft.isDirty}
          >
            {t("insurance.keep")}
          </Button>
          {draft.isDirty && (
            <Button look="quiet" onPress={draft.done}>
              {t("desk.dropChanges")}
            </Button>
          )}
        </div>
      )}
      <div aria-live="polite">
        {keep.isSuccess && <p>{t("insurance.kept", { on: dateText(policy.validFrom, "full") })}</p>}
        {look.data !== undefined && <PreviewTable answer={look.data} />}
      </div>
    </section>
  );
}
