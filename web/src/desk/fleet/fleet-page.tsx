import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, Loading } from "../../parts/index.ts";
import { dateText, figureText, has, say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import "../hires/hires.css";

type Vehicle = Schemas["VehicleSummary"];

/** Due dates are worth a word from here on, days: common practice, no source. */
const SOON_DAYS = 42;

function DueSoon({ vehicle }: { readonly vehicle: Vehicle }) {
  const soon = vehicle.due.filter(({ days }) => days <= SOON_DAYS);
  if (soon.length === 0) return <span className="quiet">{t("fleet.nothingDue")}</span>;
  return (
    <ul>
      {soon.map(({ kind, dueOn, days }) => (
        <li key={kind} className={days < 0 ? "strip-say-trouble" : undefined}>
          {t("fleet.due", {
            what: has(`due.${kind}`) ? say(`due.${kind}`) : kind,
            on: dateText(dueOn, "short"),
            days,
          })}
        </li>
      ))}
    </ul>
  );
}

function Row({ vehicle }: { readonly vehicle: Vehicle }) {
  return (
    <tr>
      <td>
        <Link href={`/fleet/${encodeURIComponent(vehicle.id)}`} className="link-row">
          {vehicle.name}
        </Link>{" "}
        <span className="quiet nowrap">{vehicle.registration}</span>
        <div className="quiet">{say(`body.style.${vehicle.bodyStyle}`)}</div>
      </td>
      <td className="num">{t("fleet.room", { belts: vehicle.belts, berths: vehicle.berths })}</td>
      <td className="num">{figureText({ value: vehicle.mamKg, unit: "kg" })}</td>
      <td>
        {t(`fleet.now.${vehicle.now}`)}
        {vehicle.nextOut !== null && (
          <div className="quiet">
            <Link href={placeOfHire(vehicle.nextOut.hireId)}>
              {t("fleet.nextOut", { from: dateText(vehicle.nextOut.from, "dayTime") })}
            </Link>
          </div>
        )}
      </td>
      <td>
        <DueSoon vehicle={vehicle} />
      </td>
    </tr>
  );
}

/** Every vehicle: what it takes, where it is, what falls due. */
export default function FleetPage() {
  usePageTitle(t("desk.nav.fleet"));
  const fleet = useQuery({ queryKey: ["vehicles"], queryFn: () => take(client.GET("/api/vehicles")) });
  return (
    <>
      <div className="page-head">
        <h1>{t("fleet.title", { n: fleet.data?.vehicles.length ?? 0 })}</h1>
      </div>
      <section className="card">
        {fleet.isPending && <Loading />}
        <FailureNote failure={fleet.error} onAgain={() => void fleet.refetch()} />
        {fleet.data?.vehicles.length === 0 && <Empty>{t("fleet.none")}</Empty>}
        {fleet.data !== undefined && fleet.data.vehicles.length > 0 && (
          <table className="dense hires-table">
            <thead>
              <tr>
                <th>{t("fleet.vehicle")}</th>
                <th>{t("fleet.takes")}</th>
                <th>{t("fleet.mam")}</th>
                <th>{t("fleet.where")}</th>
                <th>{t("fleet.dueSoon")}</th>
              </tr>
            </thead>
            <tbody>
              {fleet.data.vehicles.map((vehicle) => (
                <Row key={vehicle.id} vehicle={vehicle} />
              ))}
            </tbody>
          </table>
        )}
      </section>
    </>
  );
}
