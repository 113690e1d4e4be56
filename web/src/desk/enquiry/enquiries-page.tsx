import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, LinkButton, Loading, PlainPill, ScrollX } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { ToAnswer } from "./to-answer.tsx";
import { WaitingLine } from "./waiting-line.tsx";
import "./enquiry.css";

type Enquiries = Schemas["Enquiries"];

/** Who waits and could be served now; what was lost, cancelled or not taken, and why. */
export default function EnquiriesPage() {
  usePageTitle(t("rates.enquiries"));
  const found = useQuery({
    queryKey: ["enquiries"],
    queryFn: () => take(client.GET("/api/enquiries")),
  });
  return (
    <>
      <div className="page-head">
        <h1>{t("rates.enquiries")}</h1>
        <div className="page-acts">
          <LinkButton href="/enquiry" look="main">
            {t("desk.newEnquiry")}
          </LinkButton>
        </div>
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined && (
        <div className="stack">
          <ToAnswer />
          <WaitingList waiting={found.data.waiting} classes={found.data.classes} />
          <Ended found={found.data} />
        </div>
      )}
    </>
  );
}

function WaitingList({ waiting, classes }: Pick<Enquiries, "waiting" | "classes">) {
  return (
    <section className="card stack" aria-labelledby="waiting-list-title">
      <h2 id="waiting-list-title">{t("rates.waiting", { n: waiting.length })}</h2>
      {waiting.length === 0 ? (
        <Empty>{t("rates.nobodyWaits")}</Empty>
      ) : (
        <ul>
          {waiting.map((line) => (
            <WaitingLine key={line.hireId} line={line} classes={classes} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Ended({ found }: { readonly found: Enquiries }) {
  const { ended, reasons } = found;
  return (
    <section className="card stack" aria-labelledby="ended-title">
      <h2 id="ended-title">{t("rates.ended")}</h2>
      {ended.length === 0 ? (
        <Empty>{t("rates.noneEnded")}</Empty>
      ) : (
        <>
          <p className="quiet">
            {reasons
              .map(({ as, code, count }) =>
                t("rates.reasonCount", {
                  as: t("rates.endedAs", { as }),
                  why: t("rates.why", { code }),
                  n: count,
                }),
              )
              .join(" · ")}
          </p>
          <ScrollX label={t("rates.ended")}>
            <table className="dense rows-as-cards">
              <thead>
                <tr>
                  <th>{t("desk.hires.who")}</th>
                  <th>{t("desk.hires.when")}</th>
                  <th>{t("rates.asWhat")}</th>
                  <th>{t("end.reason")}</th>
                  <th>{t("rates.kept")}</th>
                </tr>
              </thead>
              <tbody>
                {ended.map((line) => (
                  <EndedRow key={line.hireId} line={line} />
                ))}
              </tbody>
            </table>
          </ScrollX>
        </>
      )}
    </section>
  );
}

function EndedRow({ line }: { readonly line: Enquiries["ended"][number] }) {
  return (
    <tr>
      <td>
        <Link href={placeOfHire(line.hireId)} className="link-row">
          {line.customer === "" ? line.reference : line.customer}
        </Link>
        <div className="quiet">{line.reference}</div>
      </td>
      <td className="num">
        {dateText(line.from, "day")}
        <div className="quiet">{t("desk.hires.until", { to: dateText(line.to, "day") })}</div>
      </td>
      <td>
        <PlainPill>{t("rates.endedAs", { as: line.as })}</PlainPill>
        <div className="quiet num">{dateText(line.at, "day")}</div>
      </td>
      <td>
        {line.code !== null && <strong>{t("rates.why", { code: line.code })}</strong>} {line.reason}
      </td>
      <td className="num" data-label={line.keep === null ? undefined : t("rates.kept")}>
        {line.keep === null ? "" : moneyText(line.keep)}
        {line.refund !== null && line.refund.pence > 0 && (
          <div className="quiet">{t("rates.refunded", { money: moneyText(line.refund) })}</div>
        )}
      </td>
    </tr>
  );
}
