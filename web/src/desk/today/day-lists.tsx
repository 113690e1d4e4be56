import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { findingWords, GlassPill, PlainPill } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { placeOfHire } from "../where.ts";

type Hire = Schemas["HireSummary"];
type Today = Schemas["Today"];

function Name({ hire }: { readonly hire: Hire }) {
  return (
    <Link href={placeOfHire(hire.id)} className="link-row">
      {hire.customer}
    </Link>
  );
}

function Vehicle({ hire }: { readonly hire: Hire }) {
  if (hire.vehicle === null) return <span className="quiet">{t("desk.noVehicle")}</span>;
  return (
    <>
      {hire.vehicle.name} <span className="quiet nowrap">{hire.vehicle.registration}</span>
    </>
  );
}

export const owedText = (hire: Hire): string =>
  hire.owedPence !== undefined && hire.owedPence > 0
    ? t("desk.owed", { money: moneyText({ currency: "GBP", pence: hire.owedPence }) })
    : "";

/** What stands on the line of a hire: the glass before the keys, the stage after them. */
export function HirePill({ hire }: { readonly hire: Hire }) {
  if (hire.glass !== null) {
    return (
      <GlassPill
        state={hire.glass}
        isSoFar={hire.gatesLater > 0}
        because={hire.worst === null ? undefined : t(`gate.${hire.worst.gate}`)}
      />
    );
  }
  return <PlainPill>{t(`stage.${hire.stage}`)}</PlainPill>;
}

/** The time, with its day where that is not the one shown: what should have gone or come before. */
const timeOf = (local: string, date: string): string =>
  dateText(local, local.slice(0, 10) === date ? "time" : "dayTime");

export function OutList({ hires, date }: { readonly hires: readonly Hire[]; readonly date: string }) {
  return (
    <section className="card" aria-labelledby="out-title">
      <h2 id="out-title">{t("desk.today.out", { n: hires.length })}</h2>
      {hires.length === 0 ? (
        <p className="quiet">{t("desk.today.noneOut")}</p>
      ) : (
        <table className="dense day-table">
          <caption className="visually-hidden">{t("desk.today.outCaption")}</caption>
          <tbody>
            {hires.map((hire) => (
              <tr key={hire.id}>
                <td className="num day-time">{timeOf(hire.from, date)}</td>
                <td>
                  <Name hire={hire} />
                </td>
                <td>
                  <Vehicle hire={hire} />
                </td>
                <td className="day-pill">
                  <HirePill hire={hire} />
                </td>
                <td className="quiet num day-owed">{owedText(hire)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function backState(hire: Hire, now: string | null): string {
  if (hire.stage === "onHire" || hire.stage === "handedOver") {
    if (now !== null && hire.late === "back") return t("desk.today.late");
    return t("desk.onTheRoad", { n: hire.toActOn });
  }
  return t(`stage.${hire.stage}`);
}

export function BackList({
  hires,
  now,
  date,
}: {
  readonly hires: readonly Hire[];
  readonly now: string | null;
  readonly date: string;
}) {
  return (
    <section className="card" aria-labelledby="back-title">
      <h2 id="back-title">{t("desk.today.back", { n: hires.length })}</h2>
      {hires.length === 0 ? (
        <p className="quiet">{t("desk.today.noneBack")}</p>
      ) : (
        <table className="dense day-table">
          <caption className="visually-hidden">{t("desk.today.backCaption")}</caption>
          <tbody>
            {hires.map((hire) => (
              <tr key={hire.id}>
                <td className="num day-time">{timeOf(hire.to, date)}</td>
                <td>
                  <Name hire={hire} />
                </td>
                <td>
                  <Vehicle hire={hire} />
                </td>
                <td className="quiet">{backState(hire, now)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** What is to act on stands first; the rest is a line each. */
export function OnTheRoad({ hires }: { readonly hires: readonly Hire[] }) {
  const inOrder = [...hires].sort((a, b) => b.toActOn - a.toActOn || (a.to < b.to ? -1 : 1));
  return (
    <section className="card" aria-labelledby="road-title">
      <h2 id="road-title">{t("desk.today.road", { n: hires.length })}</h2>
      <ul>
        {inOrder.map((hire) => (
          <li key={hire.id} className="road-line-row">
            <Name hire={hire} /> <Vehicle hire={hire} />{" "}
            <span className="quiet num">{t("today.until", { to: dateText(hire.to, "day") })}</span>
            <div className="quiet">
              {hire.worst !== null && hire.toActOn > 0
                ? findingWords(hire.worst)
                : t("desk.onTheRoad", { n: hire.toActOn })}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Enquiries to answer and hires to settle. */
export function Waiting({ today }: { readonly today: Today }) {
  const { enquiries, quotes, toSettle } = today.open;
  if (enquiries + quotes + toSettle === 0) return null;
  return (
    <section className="card today-waiting" aria-labelledby="waiting-title">
      <h2 id="waiting-title">
        {t("desk.today.waiting", { enquiries: enquiries + quotes, settle: toSettle })}
      </h2>
      <ul>
        {[...today.enquiries, ...today.toSettle].map((hire) => (
          <li key={hire.id} className="road-line-row">
            <Name hire={hire} />{" "}
            <span className="quiet">{`${t(`stage.${hire.stage}`)} · ${dateText(hire.from, "short")}`}</span>
          </li>
        ))}
      </ul>
      {enquiries + quotes + toSettle > today.enquiries.length + today.toSettle.length && (
        <p>
          <Link href="/hires">{t("today.allWaiting")}</Link>
        </p>
      )}
    </section>
  );
}
