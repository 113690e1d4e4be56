import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { classes, FindingText, GlassPill, LinkButton, PlainPill } from "../../parts/index.ts";
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

interface BlockedProps {
  readonly blocker: Blocker;
  readonly now: string;
  /** the day that is shown: its own times stand without a date */
  readonly date: string;
}

function Blocked({ blocker, now, date }: BlockedProps) {
  const { hire, why, lateMinutes } = blocker;
  const { worst, vehicle } = hire;
  const at = why === "late" ? hire.to : hire.from;
  const act = actOf(blocker);
  return (
    <li className="hold-line">
      <span className="hold-pill">
        <Pill blocker={blocker} />
      </span>
      <span className="hold-who">
        <span className="num">{dateText(at, at.slice(0, 10) === date ? "time" : "dayTime")}</span>{" "}
        <Link href={placeOfHire(hire.id)} className="link-row">
          {hire.customer}
        </Link>
        {vehicle !== null && (
          <span>
            {" "}
            {vehicle.name} <span className="quiet nowrap">{vehicle.registration}</span>
          </span>
        )}
      </span>
      <span className="hold-why">
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
      </span>
      <span className="hold-act">
        <LinkButton href={act.href} small>
          {act.text}
        </LinkButton>
      </span>
    </li>
  );
}

/** So many fit one under the other on a desk's screen, below the road of the day; more stand in two columns. */
const ONE_COLUMN = 7;

export interface HoldingUpProps {
  readonly blockers: readonly Blocker[];
  readonly now: string;
  readonly date: string;
}

/** What holds things up, worst first, each with its reason, its figure and the one act that helps. */
export function HoldingUp({ blockers, now, date }: HoldingUpProps) {
  return (
    <section className={blockers.length === 0 ? "card" : "card hold"} aria-labelledby="hold-title">
      <h2 id="hold-title">{t("desk.today.holding", { n: blockers.length })}</h2>
      {blockers.length === 0 ? (
        <p className="quiet">{t("desk.today.nothingHolds")}</p>
      ) : (
        <ol
          className={classes("hold-list", blockers.length > ONE_COLUMN && "hold-list-many")}
          aria-label={t("desk.today.holdingCaption")}
        >
          {blockers.map((blocker) => (
            <Blocked key={`${blocker.hireId}.${blocker.why}`} blocker={blocker} now={now} date={date} />
          ))}
        </ol>
      )}
    </section>
  );
}
