import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Empty, Loading, ScrollX } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { usePageTitle } from "../../use-page-title.ts";
import { dueText, dutyText, lastText } from "./due-text.ts";
import "../../hires/hires.css";

const DAYS = 60;

/** The due-date book of the fleet: what is over or falls due soon, nearest first, and open defects. */
export default function DuePage() {
  usePageTitle(t("upkeep.title"));
  const book = useQuery({
    queryKey: ["upkeep", DAYS],
    queryFn: () => take(client.GET("/api/upkeep", { params: { query: { days: DAYS } } })),
  });
  if (book.isPending) return <Loading />;
  if (book.isError) return <FailureNote failure={book.error} onAgain={() => void book.refetch()} />;
  const { vehicles } = book.data;
  const lines = vehicles
    .flatMap(({ vehicle, due }) => due.map((line) => ({ vehicle, line })))
    .sort((a, b) => (a.line.dueOn ?? "0").localeCompare(b.line.dueOn ?? "0"));
  const withDefects = vehicles.filter(({ openDefects }) => openDefects.safety + openDefects.comfort > 0);
  return (
    <>
      <div className="page-head">
        <h1>{t("upkeep.title")}</h1>
        <p className="quiet">{t("upkeep.lead", { days: DAYS })}</p>
      </div>
      <section className="card stack">
        {withDefects.map(({ vehicle, openDefects }) => (
          <p key={vehicle.id}>
            <Link href={`/fleet/${encodeURIComponent(vehicle.id)}`} className="link-row">
              {vehicle.name}
            </Link>{" "}
            {t("upkeep.defects", openDefects)}
          </p>
        ))}
        {lines.length === 0 ? (
          <Empty>{t("upkeep.none")}</Empty>
        ) : (
          <ScrollX label={t("upkeep.title")}>
            <table className="dense rows-as-cards">
              <thead>
                <tr>
                  <th>{t("upkeep.due")}</th>
                  <th>{t("upkeep.what")}</th>
                  <th>{t("upkeep.vehicle")}</th>
                  <th>{t("upkeep.last")}</th>
                </tr>
              </thead>
              <tbody>
                {lines.map(({ vehicle, line }) => (
                  <tr key={`${vehicle.id} ${line.kind}`}>
                    <td className="num">
                      {dueText(line)}
                      <div className={line.state === "over" ? "strip-say-trouble" : "quiet"}>
                        {t("upkeep.state", { state: line.state })}
                      </div>
                    </td>
                    <td>
                      {dutyText(line.kind)}
                      <div className="quiet">{t("upkeep.status", { status: line.status })}</div>
                    </td>
                    <td>
                      <Link href={`/fleet/${encodeURIComponent(vehicle.id)}`} className="link-row">
                        {vehicle.name}
                      </Link>{" "}
                      <span className="quiet nowrap">{vehicle.registration}</span>
                    </td>
                    <td data-label={t("upkeep.last")}>{lastText(line)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollX>
        )}
      </section>
    </>
  );
}
