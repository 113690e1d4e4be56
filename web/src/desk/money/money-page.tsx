import { useQuery } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Loading, ScrollX } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { ExportCard } from "./export-card.tsx";
import { FirmCard } from "./firm-card.tsx";
import { VatCard } from "./vat-card.tsx";
import "../hire/hire.css";
import "./money.css";

type Page = Schemas["MoneyPage"];
type About = Pick<Page["overdue"][number], "hireId" | "reference" | "customer" | "registration">;

function Hire({ about }: { readonly about: About }) {
  return (
    <>
      <Link href={`${placeOfHire(about.hireId)}/money`} className="link-row">
        {about.customer}
      </Link>{" "}
      <span className="quiet nowrap">{about.reference}</span>{" "}
      <span className="quiet nowrap">{about.registration}</span>
    </>
  );
}

interface ListProps {
  readonly id: string;
  readonly title: string;
  readonly lead?: string;
  readonly none: string;
  readonly head: readonly string[];
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[] }[];
}

/** A list whose first column is the hire and whose last is an amount. */
function List({ id, title, lead, none, head, rows }: ListProps) {
  return (
    <section className="card stack-tight" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {lead !== undefined && <p className="quiet">{lead}</p>}
      {rows.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ScrollX label={title}>
          <table className="dense amounts">
            <thead>
              <tr>
                {head.map((text) => (
                  <th key={text}>{text}</th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, cells }) => (
                <tr key={key}>
                  {cells.map((cell, k) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: the columns of a table stay in their order
                    <td key={k}>{cell}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollX>
      )}
    </section>
  );
}

function Overdue({ page }: { readonly page: Page }) {
  return (
    <List
      id="money-overdue"
      title={t("moneyPage.overdue", { n: page.overdue.length })}
      none={t("moneyPage.overdueNone")}
      head={[t("moneyPage.hire"), t("schedule.part"), t("schedule.dueOn"), t("schedule.open")]}
      rows={page.overdue.map((line) => ({
        key: `${line.hireId} ${line.dueOn} ${line.what}`,
        cells: [
          <Hire key="hire" about={line} />,
          t(`instalment.${line.what}`),
          <>
            <span className="nowrap">{dateText(line.dueOn, "short")}</span>
            <div className="strip-say-trouble">{t("schedule.overdue", { days: line.days })}</div>
          </>,
          moneyText(line.open),
        ],
      }))}
    />
  );
}

function Holds({ page }: { readonly page: Page }) {
  return (
    <List
      id="money-holds"
      title={t("moneyPage.holds", { n: page.holds.length })}
      lead={t("moneyPage.holdsLead")}
      none={t("moneyPage.holdsNone")}
      head={[t("moneyPage.hire"), t("moneyPage.standsTo"), t("moneyPage.neededTo"), t("money.amount")]}
      rows={page.holds.map((line) => ({
        key: line.hold.id,
        cells: [
          <Hire key="hire" about={line} />,
          <>
            <span className="nowrap">{dateText(line.hold.standsTo, "short")}</span>
            <div className={line.hold.daysLeft < 4 ? "strip-say-trouble" : "quiet"}>
              {line.hold.daysLeft < 0
                ? t("moneyPage.ended")
                : t("moneyPage.daysLeft", { days: line.hold.daysLeft })}
            </div>
          </>,
          <span key="needed" className="nowrap">
            {dateText(line.hold.neededTo, "short")}
          </span>,
          moneyText(line.hold.amount),
        ],
      }))}
    />
  );
}

function Failed({ page }: { readonly page: Page }) {
  return (
    <List
      id="money-failed"
      title={t("moneyPage.failed", { n: page.failed.length })}
      none={t("moneyPage.failedNone")}
      head={[t("moneyPage.hire"), t("money.when"), t("refund.reason"), t("money.amount")]}
      rows={page.failed.map((line) => ({
        key: `${line.hireId} ${line.on} ${line.amount.pence}`,
        cells: [
          <Hire key="hire" about={line} />,
          <span key="on" className="nowrap">
            {dateText(line.on, "short")}
          </span>,
          line.note ?? "–",
          moneyText(line.amount),
        ],
      }))}
    />
  );
}

function PayBack({ page }: { readonly page: Page }) {
  if (page.toPayBack.length === 0) return null;
  return (
    <List
      id="money-back"
      title={t("moneyPage.payBack", { n: page.toPayBack.length })}
      none=""
      head={[t("moneyPage.hire"), t("moneyPage.stage"), t("money.amount")]}
      rows={page.toPayBack.map((line) => ({
        key: line.hireId,
        cells: [
          <Hire key="hire" about={line} />,
          line.stage === "" ? "–" : stageText(line.stage),
          moneyText(line.amount),
        ],
      }))}
    />
  );
}

const stageText = (stage: string): string => t("moneyPage.stageOf", { stage });

function Held({ page }: { readonly page: Page }) {
  const { held } = page;
  return (
    <section className="card stack-tight" aria-labelledby="money-held">
      <h2 id="money-held">{t("moneyPage.held")}</h2>
      <p className="quiet">{t("moneyPage.heldLead")}</p>
      <dl className="sums">
        {(["total", "deposits", "prepaid", "onCards"] as const).map((id) => (
          <div key={id}>
            <dt>{t(`moneyPage.held.${id}`)}</dt>
            <dd>{moneyText(held[id])}</dd>
          </div>
        ))}
      </dl>
      <details>
        <summary className="fold">{t("moneyPage.byHire", { n: held.hires.length })}</summary>
        <ScrollX label={t("moneyPage.held")}>
          <table className="dense amounts-all">
            <thead>
              <tr>
                <th>{t("moneyPage.hire")}</th>
                <th>{t("moneyPage.held.deposits")}</th>
                <th>{t("moneyPage.held.prepaid")}</th>
                <th>{t("moneyPage.held.onCards")}</th>
              </tr>
            </thead>
            <tbody>
              {held.hires.map((line) => (
                <tr key={line.hireId}>
                  <td>
                    <Hire about={line} />
                  </td>
                  <td>{moneyText(line.deposits)}</td>
                  <td>{moneyText(line.prepaid)}</td>
                  <td>{moneyText(line.onCards)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollX>
      </details>
    </section>
  );
}

/** What is owed and held today, what runs out, what did not arrive; the export for the accountant. */
export default function MoneyPage() {
  usePageTitle(t("moneyPage.title"));
  const { may } = useSignedIn();
  const money = useQuery({ queryKey: ["money"], queryFn: () => take(client.GET("/api/money")) });
  if (money.isPending) return <Loading />;
  if (money.isError) return <FailureNote failure={money.error} onAgain={() => void money.refetch()} />;
  const page = money.data;
  return (
    <>
      <div className="page-head">
        <h1>{t("moneyPage.title")}</h1>
        <p className="quiet">{t("moneyPage.asOf", { on: dateText(page.today, "full") })}</p>
      </div>
      <div className="stack">
        <Overdue page={page} />
        <Holds page={page} />
        <Failed page={page} />
        <PayBack page={page} />
        <Held page={page} />
        {may.includes("money.export") && <ExportCard today={page.today} />}
        <FirmCard firm={page.firm} version={page.firmVersion} mayChange={may.includes("money.firm")} />
        <VatCard vat={page.vat} />
      </div>
    </>
  );
}
