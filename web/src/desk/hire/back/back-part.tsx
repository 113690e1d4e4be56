import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateTimeField, Empty } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { CustodyCard } from "../../custody/custody-card.tsx";
import { FailureNote } from "../../failure-note.tsx";
import { UseCard } from "../../outcomes/use-card.tsx";
import { useSignedIn } from "../../session.ts";
import { HireStockCard } from "../../stock/hire-stock-card.tsx";
import { AdditionsCard } from "../additions-card.tsx";
import { PapersCard } from "../papers-card.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { WalkCard } from "../walk-card.tsx";
import { CorrectCard } from "./correct-card.tsx";
import { DepositCard } from "./deposit-card.tsx";
import { Differences } from "./differences.tsx";
import { MoreCards } from "./more-cards.tsx";
import { SettlementCard } from "./settlement-card.tsx";
import { TurnaroundCard } from "./turnaround-card.tsx";
import { VehicleDefects } from "./vehicle-defects.tsx";
import "./back.css";

const AFTER = ["returned", "settled", "closed"];

/** From the return to the close. */
export default function BackPart({ page }: PartProps) {
  const { stage } = page.hire;
  const { may } = useSignedIn();
  const isDesk = may.includes("money.see");
  const isAway = stage === "onHire" || stage === "handedOver";
  if (isAway && may.includes("hire.handOver")) return <TakeBack page={page} />;
  if (!AFTER.includes(stage)) {
    return (
      <section className="card">
        <Empty>{t("back.notYet")}</Empty>
      </section>
    );
  }
  return (
    <>
      <WalkCard title={t("back.walk")} walk={page.records.back} />
      <AdditionsCard hireId={page.hire.id} />
      <Differences page={page} />
      {isDesk && <CorrectCard page={page} />}
      <HireStockCard hireId={page.hire.id} stage={page.hire.stage} />
      {isDesk && (
        <>
          <SettlementCard page={page} />
          <DepositCard page={page} />
          <MoreCards page={page} />
        </>
      )}
      <TurnaroundCard hireId={page.hire.id} />
      <UseCard hireId={page.hire.id} trip={page.trip ?? null} />
      {page.hire.vehicle !== null && (
        <>
          <VehicleDefects vehicleId={page.hire.vehicle.id} />
          <CustodyCard vehicleId={page.hire.vehicle.id} hireId={page.hire.id} />
        </>
      )}
      <PapersCard
        hireId={page.hire.id}
        papers={["condition", "statement", "dispute", "receipt", ...lostProperty(page), "walkBack"]}
        withPack
      />
    </>
  );
}

/** The slip, once something was left behind. */
const lostProperty = (page: PartProps["page"]): readonly "lostProperty"[] =>
  page.settlement?.entries.some(({ kind }) => kind === "lost") === true ? ["lostProperty"] : [];

/** The civil time now in a zone, `YYYY-MM-DDTHH:MM`. */
const civilNow = (timeZone: string): string =>
  new Date().toLocaleString("sv-SE", { timeZone }).slice(0, 16).replace(" ", "T");

function TakeBack({ page }: PartProps) {
  const { id } = page.hire;
  const { depot } = useSignedIn();
  const [at, setAt] = useState(() => civilNow(depot.timeZone));
  const back = useHireAct(() =>
    take(client.POST("/api/hires/{id}/return", { params: { path: { id } }, body: { at } })),
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    back.mutate();
  };
  return (
    <form className="card stack" onSubmit={send} noValidate>
      <h2>{t("back.take")}</h2>
      <p className="quiet">{t("back.takeNote")}</p>
      <div className="narrow">
        <DateTimeField label={t("back.at")} value={at} onChange={setAt} error={problemAt(back.error, "at")} />
      </div>
      <FailureNote failure={back.error} shown={["at"]} />
      <div>
        <Button type="submit" look="main" isPending={back.isPending} isDisabled={at === ""}>
          {t("back.takeAct")}
        </Button>
      </div>
    </form>
  );
}
