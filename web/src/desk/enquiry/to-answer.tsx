import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { placeOfHire } from "../where.ts";

type Hire = Schemas["HireSummary"];

const ofStage = (stage: "enquiry" | "quote") =>
  take(client.GET("/api/hires", { params: { query: { which: "inHand", stage, limit: 100 } } }));

/** Enquiries without a quote and quotes without an answer, the soonest first: what the desk owes somebody a word on. */
export function ToAnswer() {
  const open = useQuery({
    queryKey: ["hires", "toAnswer"],
    queryFn: async () => {
      const [asked, quoted] = await Promise.all([ofStage("enquiry"), ofStage("quote")]);
      return [...asked.hires, ...quoted.hires].sort((a, b) => a.from.localeCompare(b.from));
    },
  });
  if (open.isPending) return null;
  if (open.isError) return <FailureNote failure={open.error} onAgain={() => void open.refetch()} />;
  return (
    <section className="card stack-tight" aria-labelledby="to-answer-title">
      <h2 id="to-answer-title">{t("rates.toAnswer", { n: open.data.length })}</h2>
      {open.data.length === 0 ? (
        <Empty>{t("rates.noneToAnswer")}</Empty>
      ) : (
        <table className="dense rows-as-cards">
          <thead>
            <tr>
              <th>{t("desk.hires.who")}</th>
              <th>{t("desk.hires.when")}</th>
              <th>{t("desk.hires.vehicle")}</th>
              <th>{t("desk.hires.state")}</th>
            </tr>
          </thead>
          <tbody>
            {open.data.map((hire) => (
              <Row key={hire.id} hire={hire} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Row({ hire }: { readonly hire: Hire }) {
  return (
    <tr>
      <td>
        <Link href={placeOfHire(hire.id)} className="link-row">
          {hire.customer === "" ? hire.reference : hire.customer}
        </Link>{" "}
        <span className="quiet">{hire.reference}</span>
      </td>
      <td className="num">
        {dateText(hire.from, "day")}{" "}
        <span className="quiet">{t("desk.hires.until", { to: dateText(hire.to, "day") })}</span>
      </td>
      <td>
        {hire.vehicle === null ? (
          <span className="quiet">{t("desk.noVehicle")}</span>
        ) : (
          <>
            {hire.vehicle.name} <span className="quiet nowrap">{hire.vehicle.registration}</span>
          </>
        )}
      </td>
      <td>
        <PlainPill>{t(`stage.${hire.stage}`)}</PlainPill>
      </td>
    </tr>
  );
}
