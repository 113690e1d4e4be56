import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, LinkButton, Loading, SelectField, TextField } from "../../parts/index.ts";
import { dateText, figureText, has, say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { thingName } from "./field-words.ts";
import "../hires/hires.css";
import "./fleet.css";

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

interface RowProps {
  readonly vehicle: Vehicle;
  /** kinds that every vehicle listed has: what says nothing is folded away */
  readonly common: ReadonlySet<string>;
}

function Row({ vehicle, common }: RowProps) {
  const own = vehicle.fitted.filter((kind) => !common.has(kind));
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
      <td className="num">
        {figureText({ value: vehicle.mamKg, unit: "kg" })}
        <div className="quiet">
          {t("fleet.payload")} {figureText({ value: vehicle.payloadKg, unit: "kg" })}
        </div>
      </td>
      <td>
        {own.length > 0 && <div className="fleet-own">{own.map(thingName).join(", ")}</div>}
        <details>
          <summary className="fold quiet">{t("fleet.hasMany", { n: vehicle.fitted.length })}</summary>
          <span className="quiet">{vehicle.fitted.map(thingName).join(", ")}</span>
        </details>
      </td>
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

const ANY = "any";

/** Every word must begin a word of what is known of the vehicle. */
function fits(vehicle: Vehicle, words: string, style: string): boolean {
  if (style !== ANY && vehicle.bodyStyle !== style) return false;
  const known = [
    vehicle.name,
    vehicle.registration,
    vehicle.registration.replace(/\s/g, ""),
    say(`body.style.${vehicle.bodyStyle}`),
    ...vehicle.fitted.map(thingName),
  ];
  const begun = known
    .join(" ")
    .toLowerCase()
    .split(/[\s-]+/);
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  return asked.every((word) => begun.some((each) => each.startsWith(word)));
}

interface FilterProps {
  readonly vehicles: readonly Vehicle[];
  readonly words: string;
  readonly style: string;
  readonly onWords: (words: string) => void;
  readonly onStyle: (style: string) => void;
}

function Filter({ vehicles, words, style, onWords, onStyle }: FilterProps) {
  const styles = [...new Set(vehicles.map(({ bodyStyle }) => bodyStyle))].sort();
  return (
    <search className="hires-search">
      <TextField
        label={t("fleet.search")}
        note={t("fleet.searchNote")}
        type="search"
        value={words}
        onChange={onWords}
      />
      <SelectField
        label={t("fleet.style")}
        value={style}
        options={[
          { value: ANY, label: t("fleet.styleAll") },
          ...styles.map((each) => ({ value: each, label: say(`body.style.${each}`) })),
        ]}
        onChange={onStyle}
      />
    </search>
  );
}

function List({ vehicles }: { readonly vehicles: readonly Vehicle[] }) {
  const common = new Set(
    (vehicles[0]?.fitted ?? []).filter((kind) => vehicles.every(({ fitted }) => fitted.includes(kind))),
  );
  return (
    <table className="dense hires-table">
      <thead>
        <tr>
          <th>{t("fleet.vehicle")}</th>
          <th>{t("fleet.takes")}</th>
          <th>{t("fleet.mam")}</th>
          <th>{t("fleet.has")}</th>
          <th>{t("fleet.where")}</th>
          <th>{t("fleet.dueSoon")}</th>
        </tr>
      </thead>
      <tbody>
        {vehicles.map((vehicle) => (
          <Row key={vehicle.id} vehicle={vehicle} common={vehicles.length > 1 ? common : new Set()} />
        ))}
      </tbody>
    </table>
  );
}

/** Every vehicle: what it takes, what it has, where it is, what falls due. */
export default function FleetPage() {
  usePageTitle(t("desk.nav.fleet"));
  const { may } = useSignedIn();
  const [words, setWords] = useState("");
  const [style, setStyle] = useState(ANY);
  const fleet = useQuery({ queryKey: ["vehicles"], queryFn: () => take(client.GET("/api/vehicles")) });
  const vehicles = fleet.data?.vehicles ?? [];
  const found = vehicles.filter((vehicle) => fits(vehicle, words, style));
  return (
    <>
      <div className="page-head">
        <h1>{t("fleet.title", { n: vehicles.length })}</h1>
        <LinkButton href="/fleet/due">{t("upkeep.toFleetBook")}</LinkButton>
        {may.includes("vehicle.write") && (
          <LinkButton href="/fleet/new" look="main">
            {t("fleet.new")}
          </LinkButton>
        )}
      </div>
      <section className="card stack">
        {fleet.isPending && <Loading />}
        <FailureNote failure={fleet.error} onAgain={() => void fleet.refetch()} />
        {fleet.isSuccess && vehicles.length === 0 && <Empty>{t("fleet.none")}</Empty>}
        {vehicles.length > 0 && (
          <Filter vehicles={vehicles} words={words} style={style} onWords={setWords} onStyle={setStyle} />
        )}
        {vehicles.length > 0 && found.length === 0 && <Empty>{t("fleet.noneFound")}</Empty>}
        {found.length > 0 && <List vehicles={found} />}
      </section>
    </>
  );
}
