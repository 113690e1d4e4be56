import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, Dialog } from "../../../parts/index.ts";
import { dateText, moneyText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import { useSignedIn } from "../../session.ts";
import { forgetDrafts } from "../../use-draft.ts";
import type { PartProps } from "../use-hire.ts";
import { ErasureTablets } from "./erasure-tablets.tsx";

type Erasure = Schemas["Erasure"];
type Hold = Schemas["ErasureHold"];

const keyOf = (hireId: string) => ["erasure", hireId];

/** The hirer as a person who may be erased: what holds that, what waits, and what tablets still keep. For managers. */
export function ErasureCard({ page }: PartProps) {
  return useSignedIn().may.includes("customer.erase") ? <Card page={page} /> : null;
}

function Card({ page }: PartProps) {
  const { id } = page.hire;
  const [isErasing, setErasing] = useState(false);
  const erasure = useQuery({
    queryKey: [...keyOf(id), page.version],
    queryFn: () => take(client.GET("/api/hires/{id}/customer/erasure", { params: { path: { id } } })),
  });
  if (erasure.data === undefined) return null;
  const state = erasure.data;
  return (
    <section className="card stack-tight" aria-labelledby="erasure-title">
      <h2 id="erasure-title">{t("erasure.cardTitle")}</h2>
      <StateText state={state} />
      {state.holds.length > 0 && <Holds holds={state.holds} />}
      {state.state !== "none" && <ErasureTablets state={state} />}
      <div className="row">
        {state.state !== "erased" && (
          <Button look="quiet" onPress={() => setErasing(true)}>
            {t("hirerCard.erase")}
          </Button>
        )}
        {state.state === "waits" && <Withdraw hireId={id} />}
        {state.state !== "none" && (
          <a
            className="button"
            href={`/api/hires/${encodeURIComponent(id)}/customer/erasure/paper`}
            target="_blank"
            rel="noreferrer"
          >
            {t("erasure.paper")}
          </a>
        )}
      </div>
      {isErasing && (
        <EraseDialog hireId={id} name={page.customer.name} state={state} onClose={() => setErasing(false)} />
      )}
    </section>
  );
}

function StateText({ state }: { readonly state: Erasure }) {
  const { depot } = useSignedIn();
  if (state.at === null) return null;
  const at = dateText(state.at, "dayTime", depot.timeZone);
  if (state.state === "erased") return <p>{t("erasure.done", { at, by: state.by ?? "none" })}</p>;
  const answerBy = state.answerBy === null ? "–" : dateText(state.answerBy, "full");
  return <p>{t("erasure.waits", { at, by: state.by ?? "–", answerBy })}</p>;
}

function holdWords({ code, until, facts }: Hold): string {
  const { pence = 0, ...rest } = facts;
  return say(`erasure.hold.${code}`, {
    ...rest,
    money: moneyText({ currency: "GBP", pence: Number(pence) }),
    until: until === null ? "none" : dateText(until, "full"),
  });
}

function Holds({ holds }: { readonly holds: readonly Hold[] }) {
  return (
    <>
      <p className="quiet">{t("erasure.held")}</p>
      <ul className="stack-tight">
        {holds.map((hold) => (
          <li key={`${hold.hireId} ${hold.code} ${JSON.stringify(hold.facts)}`}>{holdWords(hold)}</li>
        ))}
      </ul>
    </>
  );
}

function Withdraw({ hireId }: { readonly hireId: string }) {
  const withdraw = useMutation({
    mutationFn: () =>
      take(client.DELETE("/api/hires/{id}/customer/erasure", { params: { path: { id: hireId } } })),
    onSuccess: () => queries.invalidateQueries({ queryKey: keyOf(hireId) }),
  });
  return (
    <>
      <Button look="quiet" onPress={() => withdraw.mutate()} isPending={withdraw.isPending}>
        {t("erasure.withdraw")}
      </Button>
      <FailureNote failure={withdraw.error} />
    </>
  );
}

interface EraseDialogProps {
  readonly hireId: string;
  readonly name: string;
  readonly state: Erasure;
  readonly onClose: () => void;
}

function EraseDialog({ hireId, name, state, onClose }: EraseDialogProps) {
  const isHeld = state.holds.length > 0;
  const erase = useMutation({
    mutationFn: () =>
      take(
        client.POST("/api/hires/{id}/customer/erasure", {
          params: { path: { id: hireId }, query: { when: isHeld ? "whenClear" : "now" } },
        }),
      ),
    onSuccess: (after) => {
      onClose();
      if (after.state !== "erased") {
        void queries.invalidateQueries({ queryKey: keyOf(hireId) });
        return;
      }
      // nothing that was read or typed before may still show the person
      queries.clear();
      forgetDrafts();
      window.location.assign("/hires");
    },
  });
  return (
    <Dialog title={t("hirerCard.eraseTitle", { name })} isOpen onClose={onClose}>
      {isHeld && <Holds holds={state.holds} />}
      <p>{t("hirerCard.eraseText")}</p>
      <FailureNote failure={erase.error} />
      <div className="row row-end">
        <Button
          look={isHeld ? "main" : "danger"}
          onPress={() => erase.mutate()}
          isPending={erase.isPending}
          isDisabled={isHeld && state.state === "waits"}
        >
          {t(isHeld ? "erasure.whenClear" : "hirerCard.eraseNow")}
        </Button>
      </div>
    </Dialog>
  );
}
