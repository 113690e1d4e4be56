import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { FindingText, GlassPill, LinkButton, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfGate, placeOfHire } from "../where.ts";

type Blocker = Schemas["Today"]["blockers"][number];

function Blocked({ blocker: { hire, why } }: { readonly blocker: Blocker }) {
  const { worst, vehicle } = hire;
  const act = worst === null ? t("desk.open") : t(`desk.act.${worst.gate}`);
  return (
    <tr>
      <td className="hold-pill">
        {why === "late" || hire.glass === null ? (
          <PlainPill>{t(`desk.why.${why}`)}</PlainPill>
        ) : (
          <GlassPill state={hire.glass} because={worst === null ? undefined : t(`gate.${worst.gate}`)} />
        )}
      </td>
      <td className="hold-who">
        <span className="num">{dateText(why === "late" ? hire.to : hire.from, "time")}</span>{" "}
        <Link href={placeOfHire(hire.id)} className="link-row">
          {hire.customer}
        </Link>
        {vehicle !== null && (
          <>
            , {vehicle.name} <span className="quiet nowrap">{vehicle.registration}</span>
          </>
        )}
      </td>
      <td className="hold-why">{worst !== null && <FindingText finding={worst} />}</td>
      <td className="hold-act">
        <LinkButton href={worst === null ? placeOfHire(hire.id) : placeOfGate(hire.id, worst.gate)} small>
          {act}
        </LinkButton>
      </td>
    </tr>
  );
}

/** What holds things up, worst first, each with its reason, its figure and the one act that helps. */
export function HoldingUp({ blockers }: { readonly blockers: readonly Blocker[] }) {
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
              <Blocked key={`${blocker.hireId}.${blocker.why}`} blocker={blocker} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
