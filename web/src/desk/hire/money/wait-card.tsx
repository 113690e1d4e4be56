import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, Dialog } from "../../../parts/index.ts";
import { dateText, moneyText, t } from "../../../parts/words.ts";
import { WaitForm } from "../../enquiry/wait-form.tsx";
import type { PartProps } from "../use-hire.ts";

/** On the waiting list or not, before it is booked; how it ended, after it did. */
export function WaitCard({ page }: PartProps) {
  if (page.ending !== null) return <EndedCard page={page} />;
  return page.hire.stage === "enquiry" || page.hire.stage === "quote" ? <Waits page={page} /> : null;
}

function Waits({ page }: PartProps) {
  const [isOpen, setOpen] = useState(false);
  const { waiting } = page;
  const found = useQuery({
    queryKey: ["enquiries", "classes"],
    queryFn: () => take(client.GET("/api/enquiries", { params: { query: { part: "waiting" } } })),
    enabled: isOpen,
  });
  return (
    <>
      <div className="row">
        {waiting !== null && <span>{t("rates.waitsCard", { since: dateText(waiting.since, "day") })}</span>}
        <Button look="quiet" onPress={() => setOpen(true)}>
          {t(waiting === null ? "rates.wait" : "rates.changeWait")}
        </Button>
      </div>
      <Dialog title={t("rates.waitTitle")} isOpen={isOpen} onClose={() => setOpen(false)}>
        <WaitForm
          hireId={page.hire.id}
          wait={waiting}
          version={page.versions.waiting}
          classes={found.data?.classes ?? []}
          onDone={() => setOpen(false)}
        />
      </Dialog>
    </>
  );
}

function EndedCard({ page }: PartProps) {
  const { ending } = page;
  if (ending === null) return null;
  const { charge } = ending;
  return (
    <section className="card stack-tight" aria-labelledby="ended-card-title">
      <h2 id="ended-card-title">{t("rates.endedTitle")}</h2>
      <p>
        {t("rates.endedAs", { as: ending.as })}, {dateText(ending.at, "full")}
        {ending.code !== null && `: ${t("rates.why", { code: ending.code })}`}
      </p>
      {charge != null && (
        <EndSums charge={charge} termsId={ending.termsId} total={page.quote?.total ?? null} />
      )}
    </section>
  );
}

type Charge = NonNullable<NonNullable<PartProps["page"]["ending"]>["charge"]>;

/** The scale as it is applied, and what comes of it. */
export function EndSums({
  charge,
  termsId,
  total,
}: {
  readonly charge: Charge;
  readonly termsId: string | null;
  readonly total: Charge["keep"] | null;
}) {
  const orNone = (money: Charge["keep"]) => (money.pence === 0 ? "none" : moneyText(money));
  return (
    <>
      <p>
        {t("rates.endCost", {
          days: charge.daysBefore.value,
          percent: charge.keepPercent.value,
          total: total === null ? "" : moneyText(total),
          terms: termsId ?? "",
        })}
      </p>
      <p>
        {t("rates.endSums", {
          keep: moneyText(charge.keep),
          paid: moneyText(charge.paid),
          owed: orNone(charge.owed),
          refund: orNone(charge.refund),
        })}
      </p>
    </>
  );
}
