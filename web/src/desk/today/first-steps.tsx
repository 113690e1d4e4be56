import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { say, t } from "../../parts/words.ts";

const PLACES = {
  vehicle: "/fleet/new",
  rateCard: "/terms",
  prices: "/terms/prices",
  insurer: "/insurance",
  firm: "/money",
  people: "/accounts",
} as const;

/** What a new firm has still to enter; gone for good once it is. */
export function FirstSteps() {
  const found = useQuery({
    queryKey: ["firstSteps"],
    queryFn: () => take(client.GET("/api/first-steps")),
    staleTime: 0,
  });
  if (found.data === undefined || found.data.open.length === 0) return null;
  const { open, of } = found.data;
  return (
    <section className="card stack-tight first-steps" aria-labelledby="first-steps-title">
      <h2 id="first-steps-title">{t("firstSteps.title", { done: of - open.length, of })}</h2>
      <ul>
        {open.map((step) => (
          <li key={step}>
            <Link href={PLACES[step]} className="link-row">
              {say(`firstSteps.${step}`)}
            </Link>
            <p className="quiet">{say(`firstSteps.${step}.why`)}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
