import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfHire } from "../where.ts";

/** Who waits and could be served now; nothing where nobody could. */
export function CouldServeCard() {
  const found = useQuery({
    queryKey: ["enquiries", "waiting"],
    queryFn: () => take(client.GET("/api/enquiries", { params: { query: { part: "waiting" } } })),
    staleTime: 60_000,
  });
  const lines = found.data?.waiting.filter(({ could }) => could.length > 0) ?? [];
  if (lines.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="could-title">
      <h2 id="could-title">{t("rates.todayWaiting", { n: lines.length })}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line.hireId} className="road-line-row">
            <Link href={placeOfHire(line.hireId)} className="link-row">
              {line.customer}
            </Link>{" "}
            <span className="quiet">
              {t("rates.todayCould", {
                from: dateText(line.from, "day"),
                to: dateText(line.to, "day"),
                vehicles: line.could.map(({ name }) => name).join(", "),
              })}
            </span>
          </li>
        ))}
      </ul>
      <p>
        <Link href="/enquiries">{t("rates.seeWaiting")}</Link>
      </p>
    </section>
  );
}
