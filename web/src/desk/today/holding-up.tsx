import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { FindingText, GlassPill, LinkButton, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfGate, placeOfHire } from "../where.ts";

type Blocker = Schemas["Today"]["blockers"][number];

/** What to do about it and where: who is late is rung or taken back, everything else goes to its gate. */
function actOf({ hire, why }: Blocker): { readonly href: string; readonly text: string } {
  if (why === "late") return { href: `${placeOfHire(hire.id)}/back`, text: t("today.callOrTakeBack") };
  if (hire.worst === null) return { href: placeOfHire(hire.id), text: t("desk.open") };
  return { href: placeOfGate(hire.id, hire.worst.gate), text: t(`desk.act.${hire.worst.gate}`) };
}

function Pill({ blocker: { hire, why } }: { readonly blocker: Blocker }) {
  if (why === "late" || hire.glass === null) return <PlainPill>{t("today.late")}</PlainPill>;
  return (
    <GlassPill state={hire.glass} because={hire.worst === null ? undefined : t(`gate.${hire.worst.gate}`)} />
  );
}

/** Since when it is late, and who waits for the vehicle. */
function LateText({ blocker, now }: { readonly blocker: Blocker; readonly now: string }) {
  const { hire, lateMinutes, next, readyAt } = blocker;
  const due = dateText(hire.to, hire.to.slice(0, 10) === now.slice(0, 10) ? "time" : "dayTime");
  return (
    <>
      {t("today.lateBack", { due, hours: Math.floor(lateMinutes / 60), minutes: lateMinutes % 60 })}{" "}
      {next !== null && readyAt !== null && (
        <>
          {t(readyAt > next.from ? "today.nextWaits" : "today.nextInTime", {
            ready: dateText(readyAt, readyAt.slice(0, 10) === now.slice(0, 10) ? "time" : "dayTime"),
            customer: next.customer,
            at: dateText(next.from, "time"),
          })}{" "}
          {readyAt > next.from && (
            <Link href={`${placeOfHire(next.hireId)}/people`}>{t("today.otherVehicleFor")}</Link>
          )}
        </>
      )}
    </>
  );
}

function Blocked({ blocker, now }: { readonly blocker: Blocker; readonly now: string }) {
  const { hire, why, lateMinutes } = blocker;
  const { worst, vehicle } = hire;
  const at = why === "late" ? hire.to : hire.from;
  const act = actOf(blocker);
  return (
    <tr>
      <td className="hold-pill">
        <Pill blocker={blocker} />
      </td>
      <td className="hold-who">
        <span className="num">{dateText(at, at.slice(0, 10) === now.slice(0, 10) ? "time" : "dayTime")}</span>{" "}
        <Link href={placeOfHire(hire.id)} className="link-row">
          {hire.customer}
        </Link>
        {vehicle !== null && (
          <>
            , {vehicle.name} <span className="quiet nowrap">{vehicle.registration}</span>
          </>
        )}
      </td>
      <td className="hold-why">
        {why === "late" ? (
          <LateText blocker={blocker} now={now} />
        ) : (
          <>
            {worst !== null && <FindingText finding={worst} />}
            {hire.late === "out" && (
              <span className="hold-late">
                {" "}
                {t("today.lateOut", { hours: Math.floor(lateMinutes / 60), minutes: lateMinutes % 60 })}
              </span>
            )}
          </>
        )}
      </td>
      <td className="hold-act">
        <LinkButton href={act.href} small>
          {act.text}
        </LinkButton>
      </td>
    </tr>
  );
}

/** What holds things up, worst first, each with its reason, its figure and the one act that helps. */
export function HoldingUp({
  blockers,
  now,
}: {
  readonly blockers: readonly Blocker[];
  readonly now: string;
}) {
  return (
    <section className={blockers.length === 0 ? "card" : "card hold"} aria-labelledby="hold-title">
      <h2 id="hold-title">{t("desk.today.holding", { n: blockers.length })}</h2>
      {blockers.length === 0 ? (
        <p className="quiet">{t("desk.today.nothingHolds")}</p>
      ) : (
        <table className="dense hold-table">
          <caption className="visually-hidden">{t("desk.today.holdingCaption")}</caption>
          <tbody>
            {blockers.map((blocker) => (
              <Blocked key={`${blocker.hireId}.${blocker.why}`} blocker={blocker} now={now} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
